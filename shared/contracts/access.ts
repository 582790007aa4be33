import { z } from 'zod'
import { shortText } from './quantity-field.ts'

/** What is sent and answered about who may come in. */

export const ROLE_NAMES = ['owner', 'estimator', 'crew-lead', 'mechanic', 'viewer'] as const
export type RoleName = (typeof ROLE_NAMES)[number]
const role = z.enum(ROLE_NAMES)
/** A script never lets others in. */
const scriptRole = z.enum(ROLE_NAMES).exclude(['owner'])

const MOST_DAYS_SHARED = 90

/** Names the history uses for what no account did. */
const TAKEN_NAMES = ['demo', 'seed', 'underlane', 'owner-reset']
const login = z
  .string()
  .trim()
  .toLowerCase()
  .regex(/^[a-z0-9][a-z0-9._@+-]{1,59}$/, 'two to sixty small letters, digits and . _ @ + -')
  .refine((name) => !TAKEN_NAMES.includes(name), 'another name: the program uses this one itself')

/** No control characters: a name stands in lists and in one database's text, which knows no NUL. */
const plainName = (longest: number) =>
  shortText(longest).regex(/^[^\p{Cc}\p{Cs}]+$/u, 'letters, digits and signs on one line')

const password = z.string().min(1).max(200)
const typedCode = z.string().trim().min(1).max(40)
const person = z.guid().toLowerCase().nullable().optional()

export const signInRequest = z.strictObject({
  login: plainName(80).toLowerCase(),
  password,
  code: typedCode.optional().describe('of the second factor, or a recovery code'),
})
export const codeLookRequest = z.strictObject({ code: typedCode })
export const codeRequest = z.strictObject({
  code: typedCode,
  password,
  login: login.optional().describe('of the first owner'),
  name: plainName(120).optional().describe('of the first owner'),
})
export const passwordRequest = z.strictObject({ current: password, password })
export const factorStartRequest = z.strictObject({ password })
export const factorRequest = z.strictObject({
  password,
  secret: z.string().regex(/^[A-Z2-7]{32}$/, 'the key as it was given'),
  code: typedCode,
})
export const accountRequest = z.strictObject({ login, name: plainName(120), role, person })
export const accountChange = z.strictObject({
  name: plainName(120),
  role,
  person,
  isActive: z.boolean(),
})
export const tokenRequest = z.strictObject({ name: plainName(60), role: scriptRole })
export const shareRequest = z.strictObject({
  crossing: z.guid().toLowerCase(),
  name: plainName(120).describe('for whom'),
  days: z.number().int().min(1).max(MOST_DAYS_SHARED),
})
export const sharedRequest = z.strictObject({
  token: z.string().min(1).max(80),
  units: z.enum(['us', 'si']).optional(),
})

const signedIn = z.object({
  id: z.guid(),
  login: z.string(),
  name: z.string(),
  role,
  mayDo: role.describe(
    'what they may do just now: an owner without a second factor may do what an estimator may',
  ),
  hasSecondFactor: z.boolean(),
  recoveryCodesLeft: z.number().int(),
})
export type SignedIn = z.infer<typeof signedIn>

export const sessionAnswer = z.object({
  accounts: z.boolean().describe('whether anybody has to sign in here'),
  needsFirstOwner: z.boolean(),
  signedIn: signedIn.nullable(),
})
export type SessionAnswer = z.infer<typeof sessionAnswer>

export const codeLookAnswer = z.object({
  purpose: z.enum(['first-owner', 'invitation', 'reset']),
  login: z.string().nullable(),
  name: z.string().nullable(),
})
export type CodeLookAnswer = z.infer<typeof codeLookAnswer>

export const deviceList = z.object({
  items: z.array(
    z.object({
      id: z.guid(),
      device: z.string(),
      madeAt: z.string(),
      seenAt: z.string(),
      seenFrom: z.string(),
      isThis: z.boolean(),
    }),
  ),
  next: z.null(),
})

export const factorStartAnswer = z.object({ secret: z.string(), address: z.string() })
export const factorAnswer = z.object({ recoveryCodes: z.array(z.string()) })

const account = z.object({
  id: z.guid(),
  version: z.number().int(),
  login: z.string(),
  name: z.string(),
  role,
  person: z.guid().nullable(),
  isActive: z.boolean(),
  hasPassword: z.boolean(),
  hasSecondFactor: z.boolean(),
})
export type AccountAnswer = z.infer<typeof account>
export const accountList = z.object({ items: z.array(account), next: z.null() })
export const accountAnswer = account
/** The code lets its bearer choose a password, once. */
export const newCodeAnswer = z.object({ account, code: z.string(), expiresAt: z.string() })

const token = z.object({
  id: z.guid(),
  name: z.string(),
  role,
  madeBy: z.string(),
  madeAt: z.string(),
  usedAt: z.string().nullable(),
  revokedAt: z.string().nullable(),
})
export const tokenList = z.object({ items: z.array(token), next: z.null() })
export const newTokenAnswer = z.object({ item: token, token: z.string().describe('shown this once') })

const share = z.object({
  id: z.guid(),
  crossing: z.guid(),
  name: z.string(),
  madeBy: z.string(),
  madeAt: z.string(),
  expiresAt: z.string(),
  revokedAt: z.string().nullable(),
})
export const shareList = z.object({ items: z.array(share), next: z.null() })
export const newShareAnswer = z.object({
  item: share,
  token: z.string().describe('shown this once: the address is /shared#TOKEN'),
})
export const shareAccessList = z.object({
  items: z.array(z.object({ at: z.string(), from: z.string() })),
  next: z.null(),
})
