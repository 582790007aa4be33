import { LocationProvider, lazy, Route, Router, useLocation } from 'preact-iso'
import { ENGINE_VERSION } from '../shared/core/engine-version.ts'
import { AccountLink } from './access/account-link.tsx'
import { CrossingPage } from './crossings/crossing-page.tsx'
import { LateConnectionNote } from './offline/late-connection-note.tsx'
import { LateDraftBar } from './saved/late-draft-bar.tsx'
import { ReaderChoices } from './settings/reader-choices.tsx'
import type { CrossingModel } from './state/crossing-model.ts'
import { SHELL } from './words/shell-words.ts'

const WorkingsPage = lazy(() => import('./workings/workings-page.tsx').then((page) => page.WorkingsPage))
const SavedPage = lazy(() => import('./saved/saved-page.tsx').then((page) => page.SavedPage))
const SavedCrossingPage = lazy(() =>
  import('./saved/saved-crossing-page.tsx').then((page) => page.SavedCrossingPage),
)

const CardsPage = lazy(() => import('./cards/cards-page.tsx').then((page) => page.CardsPage))
const ShopPage = lazy(() => import('./shop/shop-page.tsx').then((page) => page.ShopPage))
const SignInPage = lazy(() => import('./access/sign-in-page.tsx').then((page) => page.SignInPage))
const MyAccessPage = lazy(() => import('./access/my-access-page.tsx').then((page) => page.MyAccessPage))
const SharedPage = lazy(() => import('./access/shared-page.tsx').then((page) => page.SharedPage))

const DraftPage = ({ model }: { readonly model: CrossingModel }) => (
  <CrossingPage model={model} saving={<LateDraftBar model={model} />} isDraft />
)

const PLACES = [
  { path: '/', words: () => SHELL.crossing },
  { path: '/crossings', words: () => SHELL.saved },
  { path: '/shop', words: () => SHELL.shop },
  { path: '/workings', words: () => SHELL.workings },
]

/** A saved crossing is a place below the list of them. */
const isAt = (path: string, place: string): boolean =>
  path === place || (place !== '/' && path.startsWith(`${place}/`))

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
          <a key={place.path} href={place.path} aria-current={isAt(path, place.path) ? 'page' : undefined}>
            {place.words()}
          </a>
        ))}
        <AccountLink />
      </nav>
      <a class="struck-link" href="/struck" aria-current={isAt(path, '/struck') ? 'page' : undefined}>
        {SHELL.struck}
      </a>
      <ReaderChoices />
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
      <div class="place">
        <Router>
          <Route path="/" component={DraftPage} model={model} />
          <Route path="/crossings" component={SavedPage} draft={model} />
          <Route path="/crossings/:id" component={SavedCrossingPage} draft={model} />
          <Route path="/workings" component={WorkingsPage} />
          <Route path="/shop" component={ShopPage} />
          <Route path="/shop/:tool" component={ShopPage} />
          <Route path="/shop/:tool/:part" component={ShopPage} />
          <Route path="/struck" component={CardsPage} />
          <Route path="/struck/:card" component={CardsPage} />
          <Route path="/sign-in" component={SignInPage} />
          <Route path="/access" component={MyAccessPage} />
          <Route path="/shared" component={SharedPage} />
          <Route default component={NotFound} />
        </Router>
      </div>
      <LateConnectionNote />
      <footer class="shell-footer">
        <p>{SHELL.caution}</p>
        <p class="fine">
          {SHELL.name} {SHELL.engine} {ENGINE_VERSION}
        </p>
      </footer>
    </LocationProvider>
  )
}
