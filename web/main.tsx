import './styles/tokens.css'
import './styles/base.css'
import './styles/form.css'
import './styles/answers.css'
import './styles/former.css'
import './styles/workings.css'
import './styles/print.css'
import './offline/offline.css'
import { render } from 'preact'
import { App } from './app.tsx'
import { FIRST_PRESET } from './crossings/presets.ts'
import { beginLanguage } from './settings/choose-language.ts'
import { createCrossingModel } from './state/crossing-model.ts'
import { keepDraft, recalledDraft } from './state/draft.ts'
import { wantedLanguage } from './state/language-choice.ts'
import { followTheme } from './state/theme-choice.ts'

const root = document.getElementById('app')
if (root) {
  const model = createCrossingModel(recalledDraft() ?? FIRST_PRESET)
  keepDraft(model)
  // Neither is seen at first: what is kept here and what waits to be sent follow once the page stands.
  import('./offline/start-offline.ts').then(({ startOffline }) => startOffline())
  import('./saved/flush-when-online.ts').then(({ flushWhenOnline }) => flushWhenOnline())
  import('./access/access-requests.ts').then(({ askSession }) => askSession())
  followTheme()
  // In the language asked for from the first line on; its words come from this browser's own store but once.
  beginLanguage(wantedLanguage()).then(() => render(<App model={model} />, root))
}
