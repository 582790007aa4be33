import { useLocation } from 'preact-iso'
import { SHELL } from '../words/shell-words.ts'
import { session } from './session-state.ts'

/** The way to one's own access, or to signing in; nothing where nobody has to. */
export function AccountLink() {
  const { path } = useLocation()
  const now = session.value
  if (now === null || !now.accounts) return null
  const [to, words] = now.signedIn === null ? ['/sign-in', SHELL.signIn] : ['/access', now.signedIn.name]
  return (
    <a class="account-link" href={to} aria-current={path === to ? 'page' : undefined}>
      {now.signedIn !== null && <span class="unseen">{SHELL.mine}: </span>}
      {words}
    </a>
  )
}
