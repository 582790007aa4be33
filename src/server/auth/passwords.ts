import { COMMON_PASSWORDS } from './passwords-tried-first.ts'

/** How passwords are hashed; tests use a cheaper one. */
export type PasswordHashing = {
  hash(password: string): Promise<string>
  verify(hash: string, password: string): Promise<boolean>
}

export type HashingCost = { readonly memoryKib: number; readonly passes: number }

/** OWASP's first choice for argon2id with one lane: 19 MiB, two passes. */
const USUAL_COST: HashingCost = { memoryKib: 19_456, passes: 2 }

/** One spelling for what different keyboards send for the same letters. */
const asTyped = (password: string): string => password.normalize('NFKC')

/** argon2id, by a library; loaded when first needed, so that a server for one machine starts without it. */
export function argon2Hashing(cost: HashingCost = USUAL_COST): PasswordHashing {
  const options = { memoryCost: cost.memoryKib, timeCost: cost.passes, parallelism: 1 }
  return {
    async hash(password) {
      const { hash } = await import('@node-rs/argon2')
      return hash(asTyped(password), options)
    },
    async verify(hashed, password) {
      const { verify } = await import('@node-rs/argon2')
      return verify(hashed, asTyped(password))
    },
  }
}

const SHORTEST_PASSWORD = 12
const FEWEST_SIGNS = 5

export type PasswordFault = 'password-short' | 'password-common'

const withoutMarks = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')

/** What people put for letters, and before and after a word, is no disguise. */
const bareWord = (password: string): string =>
  withoutMarks(password)
    .replace(/^[^a-z@$]+|[^a-z@$]+$/g, '')
    .replaceAll('@', 'a')
    .replaceAll('$', 's')
    .replaceAll('0', 'o')
    .replaceAll('3', 'e')
    .replace(/[1!]/g, 'i')
    .replace(/[^a-z]/g, '')

const lettersAndDigits = (password: string): string => withoutMarks(password).replace(/[^a-z0-9]/g, '')

/** Do parts of one word, over and over, make it up? */
const isRepeated = (text: string): boolean => /^(.{1,6})\1+.{0,5}$/.test(text)

function isRun(text: string): boolean {
  const steps = new Set<number>()
  for (let at = 1; at < text.length; at++) steps.add(text.charCodeAt(at) - text.charCodeAt(at - 1))
  return steps.size === 1
}

/** null when it will do. `about` are words others know: the login, the name. */
export function passwordFault(password: string, about: readonly string[]): PasswordFault | null {
  const typed = asTyped(password)
  if ([...typed].length < SHORTEST_PASSWORD) return 'password-short'
  if (new Set(typed).size < FEWEST_SIGNS) return 'password-common'
  const plain = lettersAndDigits(typed)
  const word = bareWord(typed)
  const known = [...about, 'underlane'].map(bareWord).filter((each) => each.length >= 4)
  const isKnown = known.includes(word)
  const isCommon =
    COMMON_PASSWORDS.has(plain) ||
    COMMON_PASSWORDS.has(word) ||
    COMMON_PASSWORDS.has(plain.replace(/\d+$/, ''))
  return isKnown || isCommon || isRepeated(plain) || isRun(plain) ? 'password-common' : null
}
