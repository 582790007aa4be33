import { z } from 'zod'

/**
 * Who may come in. Secrets are kept as hashes only; the one that must be read again, the key of a second factor, is why
 * the file of the store and its backups are for their owner's eyes. None of these rows is a document.
 */

const text = z.string()
const textOrNull = z.string().nullable()
const whole = z.number().int()

const accountRow = z.strictObject({
  id: text,
  version: whole,
  /** What is typed to sign in: small letters, never given to anybody else. */
  login: text,
  name: text,
  role: text,
  /** The person of the store it is, where crews are told by person; null for nobody in particular. */
  person: textOrNull,
  /** null until whoever it is for has chosen a password. */
  password_hash: textOrNull,
  totp_secret: textOrNull,
  /** The last step of the clock a second factor was taken for: none is taken twice. */
  totp_step: whole.nullable(),
  is_active: whole,
  updated_at: text,
})
export type AccountRow = z.infer<typeof accountRow>

/** `id` is the hash of the code. */
const recoveryCodeRow = z.strictObject({ id: text, account: text })

const apiTokenRow = z.strictObject({
  id: text,
  name: text,
  role: text,
  token_hash: text,
  made_by: text,
  made_at: text,
  used_at: textOrNull,
  revoked_at: textOrNull,
})
export type ApiTokenRow = z.infer<typeof apiTokenRow>

const shareLinkRow = z.strictObject({
  id: text,
  crossing: text,
  name: text,
  token_hash: text,
  made_by: text,
  made_at: text,
  expires_at: text,
  revoked_at: textOrNull,
})
export type ShareLinkRow = z.infer<typeof shareLinkRow>

const shareAccessRow = z.strictObject({ id: text, link: text, seen_at: text, seen_from: text })

/** One device that is signed in; `id` names it to its owner, the hash of its token to us. */
export type SessionRow = {
  readonly id: string
  readonly token_hash: string
  readonly account: string
  readonly device: string
  readonly made_at: string
  readonly seen_at: string
  readonly seen_from: string
  readonly second_factor: number
}

export type CodePurpose = 'first-owner' | 'invitation' | 'reset'

/** `id` is the hash of the code. */
type OneTimeCodeRow = {
  readonly id: string
  readonly purpose: CodePurpose
  readonly account: string | null
  readonly expires_at: string
}

/** Failed tries in a row, by whom they were about or from where. */
type FailedTriesRow = { readonly id: string; readonly failures: number; readonly last_at: string }

/** What is carried along in a backup. Sessions, codes and failed tries are of the moment and stay behind. */
export const ACCESS_TABLES = {
  account: accountRow,
  recovery_code: recoveryCodeRow,
  api_token: apiTokenRow,
  share_link: shareLinkRow,
  share_access: shareAccessRow,
} as const

export type AccessTables = {
  readonly [Table in keyof typeof ACCESS_TABLES]: z.infer<(typeof ACCESS_TABLES)[Table]>
} & {
  readonly session: SessionRow
  readonly one_time_code: OneTimeCodeRow
  readonly failed_tries: FailedTriesRow
}

export type CarriedTable = keyof typeof ACCESS_TABLES
export const CARRIED_TABLES = Object.keys(ACCESS_TABLES) as readonly CarriedTable[]

/** Lines of the history that are about who may come in, by their noun. They hold no secret. */
export const ACCESS_FORMATS = {
  account: 'underlane/account@1',
  api_token: 'underlane/api-token@1',
  share_link: 'underlane/share-link@1',
} as const
