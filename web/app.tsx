import { LocationProvider, lazy, Route, Router, useLocation } from 'preact-iso'
import { ENGINE_VERSION } from '../shared/core/engine-version.ts'
import type { UnitSystem } from '../shared/quantities/format-quantity.ts'
import { CrossingPage } from './crossings/crossing-page.tsx'
import { ConnectionNote } from './offline/connection-note.tsx'
import type { CrossingModel } from './state/crossing-model.ts'
import { chooseUnits, units } from './state/unit-choice.ts'
import { SHELL } from './words/workings-words.ts'

const WorkingsPage = lazy(() => import('./workings/workings-page.tsx').then((page) => page.WorkingsPage))

const PLACES = [
  { path: '/', words: SHELL.crossing },
  { path: '/workings', words: SHELL.workings },
]

function UnitChoice() {
  const systems: readonly (readonly [UnitSystem, string])[] = [
    ['us', SHELL.us],
    ['si', SHELL.si],
  ]
  return (
    <fieldset class="unit-choice">
      <legend>{SHELL.units}</legend>
      {systems.map(([system, words]) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            checked={units.value === system}
            onChange={() => chooseUnits(system)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  )
}

/** A bore under the ground between two pits: ours. */
function Sign() {
  return (
    <svg class="sign" viewBox="0 0 48 32" aria-hidden="true" focusable="false">
      <path class="sign-ground" d="M1 9h11v14h6M47 9H36v14h-6" />
      <path class="sign-bore" d="M14 20h17l5 0" />
      <path class="sign-nose" d="m30 15.5 7 4.5-7 4.5z" />
    </svg>
  )
}

function Header() {
  const { path } = useLocation()
  return (
    <header class="shell-header">
      <a class="wordmark" href="/">
        <Sign />
        <span>{SHELL.name}</span>
      </a>
      <nav aria-label={SHELL.places}>
        {PLACES.map((place) => (
          <a key={place.path} href={place.path} aria-current={path === place.path ? 'page' : undefined}>
            {place.words}
          </a>
        ))}
      </nav>
      <UnitChoice />
    </header>
  )
}

const NotFound = () => (
  <main>
    <h1>{SHELL.notFound}</h1>
  </main>
)

export function App({ model }: { readonly model: CrossingModel }) {
  return (
    <LocationProvider>
      <Header />
      <Router>
        <Route path="/" component={CrossingPage} model={model} />
        <Route path="/workings" component={WorkingsPage} />
        <Route default component={NotFound} />
      </Router>
      <ConnectionNote />
      <footer class="shell-footer">
        <p>{SHELL.caution}</p>
        <p class="fine">
          {SHELL.name} {SHELL.engine} {ENGINE_VERSION}
        </p>
      </footer>
    </LocationProvider>
  )
}
