import { SHELL } from '../words/shell-words.ts'
import { ACCESS } from './access-words.ts'

/** Why so little is shown: nobody is signed in. */
export const SignInNote = () => (
  <div class="former-note" role="status">
    <p>{ACCESS.signedOutKept}</p>
    <a href="/sign-in">{SHELL.signIn}</a>
  </div>
)
