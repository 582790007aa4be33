import type { Account } from '../../store/access/accounts.ts'
import type { Session } from '../../store/access/sessions.ts'
import type { Role } from './roles.ts'

/** Who asks. */
export type Asker =
  /** The server answers its own machine only, and nobody signs in. */
  | { readonly kind: 'open' }
  | { readonly kind: 'nobody' }
  | {
      readonly kind: 'account'
      readonly account: Account
      readonly session: Session
      readonly tokenHash: string
      /** What they may do just now: an owner's own powers need a second factor. */
      readonly role: Role
    }
  | { readonly kind: 'token'; readonly id: string; readonly name: string; readonly role: Role }

export type PersonAsking = Extract<Asker, { readonly kind: 'account' }>

const SHORT_ID = 8

/** As the history names them. Logins hold no space, so none of these is another. */
export function whoOf(asker: Asker): string {
  switch (asker.kind) {
    case 'open':
    case 'nobody':
      return 'not signed in'
    case 'account':
      return asker.account.login
    case 'token':
      return `token ${asker.name} (${asker.id.slice(0, SHORT_ID)})`
  }
}
