import type { Transaction } from 'kysely'
import type { Act } from '../noun.ts'
import type { Tables } from '../tables.ts'
import type { AccountRow } from './access-tables.ts'
import { recordAccess, type Working } from './working.ts'

/** What an account is made of; roles are words here, and have their meaning in the server. */
export type Account = {
  readonly id: string
  readonly version: number
  readonly login: string
  readonly name: string
  readonly role: string
  readonly person: string | null
  readonly passwordHash: string | null
  readonly totpSecret: string | null
  readonly isActive: boolean
  readonly updatedAt: string
}

type Described = Pick<Account, 'name' | 'role' | 'person' | 'isActive'>

export type Accounts = {
  find(id: string): Promise<Account | null>
  byLogin(login: string): Promise<Account | null>
  list(): Promise<readonly Account[]>
  /** False when the login is somebody's, or was. */
  add(account: { readonly id: string; readonly login: string } & Described, act: Act): Promise<boolean>
  /** Changes the version seen. 'last-owner': nobody would be left who may let others in. */
  describe(
    id: string,
    version: number,
    described: Described,
    act: Act,
  ): Promise<'done' | 'conflict' | 'last-owner'>
  setPassword(id: string, hash: string, act: Act): Promise<void>
  /** Sets or takes away the second factor, with the hashes of its recovery codes. */
  setSecondFactor(
    id: string,
    factor: { readonly secret: string; readonly step: number; readonly codeHashes: readonly string[] } | null,
    act: Act,
  ): Promise<void>
  /** True once for each step of the clock. */
  takeStep(id: string, step: number): Promise<boolean>
  /** True once for each code. */
  takeRecoveryCode(id: string, codeHash: string): Promise<boolean>
  recoveryCodesLeft(id: string): Promise<number>
}

const accountFrom = (row: AccountRow): Account => ({
  id: row.id,
  version: row.version,
  login: row.login,
  name: row.name,
  role: row.role,
  person: row.person,
  passwordHash: row.password_hash,
  totpSecret: row.totp_secret,
  isActive: row.is_active === 1,
  updatedAt: row.updated_at,
})

const rowOf = (transaction: Transaction<Tables>, id: string) =>
  transaction.selectFrom('account').selectAll().where('id', '=', id).executeTakeFirst()

/** Writes the columns and the line of history that says so. */
async function changed(
  transaction: Transaction<Tables>,
  row: AccountRow,
  what: { readonly did: string; readonly columns: Partial<AccountRow> },
  act: Act,
): Promise<void> {
  const next = { ...row, ...what.columns, version: row.version + 1, updated_at: act.at.toISOString() }
  await transaction.updateTable('account').set(next).where('id', '=', row.id).execute()
  await recordAccess(transaction, { ...lineOf(next, what.did), action: 'replace' }, act)
}

const lineOf = (row: AccountRow, did: string) => ({
  noun: 'account' as const,
  id: row.id,
  version: row.version,
  document: {
    did,
    login: row.login,
    name: row.name,
    role: row.role,
    person: row.person,
    isActive: row.is_active === 1,
    hasPassword: row.password_hash !== null,
    hasSecondFactor: row.totp_secret !== null,
  },
})

/** Would the firm be left without anybody who can let others in? One who has never signed in does not count. */
async function isLastOwner(transaction: Transaction<Tables>, row: AccountRow): Promise<boolean> {
  if (row.role !== 'owner' || row.is_active === 0 || row.password_hash === null) return false
  const other = await transaction
    .selectFrom('account')
    .select('id')
    .where('role', '=', 'owner')
    .where('is_active', '=', 1)
    .where('password_hash', 'is not', null)
    .where('id', '!=', row.id)
    .limit(1)
    .executeTakeFirst()
  return other === undefined
}

type Factor = { readonly secret: string; readonly step: number; readonly codeHashes: readonly string[] }

async function replaceFactor(
  transaction: Transaction<Tables>,
  id: string,
  factor: Factor | null,
  act: Act,
): Promise<void> {
  const row = await rowOf(transaction, id)
  if (row === undefined) return
  await transaction.deleteFrom('recovery_code').where('account', '=', id).execute()
  const codes = (factor?.codeHashes ?? []).map((hash) => ({ id: hash, account: id }))
  if (codes.length > 0) await transaction.insertInto('recovery_code').values(codes).execute()
  const columns = { totp_secret: factor?.secret ?? null, totp_step: factor?.step ?? null }
  const did = factor === null ? 'second factor taken away' : 'second factor set'
  await changed(transaction, row, { did, columns }, act)
}

const reading = ({ read }: Working) => ({
  find: (id: string) =>
    read(async (queries) => {
      const row = await queries.selectFrom('account').selectAll().where('id', '=', id).executeTakeFirst()
      return row === undefined ? null : accountFrom(row)
    }),
  byLogin: (login: string) =>
    read(async (queries) => {
      const row = await queries
        .selectFrom('account')
        .selectAll()
        .where('login', '=', login)
        .executeTakeFirst()
      return row === undefined ? null : accountFrom(row)
    }),
  list: () =>
    read(async (queries) =>
      (await queries.selectFrom('account').selectAll().orderBy('login').execute()).map(accountFrom),
    ),
  recoveryCodesLeft: (id: string) =>
    read(
      async (queries) =>
        (await queries.selectFrom('recovery_code').select('id').where('account', '=', id).execute()).length,
    ),
})

const taking = ({ read }: Working) => ({
  takeStep: (id: string, step: number) =>
    read(async (queries) => {
      const taken = await queries
        .updateTable('account')
        .set({ totp_step: step })
        .where('id', '=', id)
        .where((each) => each.or([each('totp_step', 'is', null), each('totp_step', '<', step)]))
        .executeTakeFirst()
      return taken.numUpdatedRows === 1n
    }),
  takeRecoveryCode: (id: string, codeHash: string) =>
    read(async (queries) => {
      const taken = await queries
        .deleteFrom('recovery_code')
        .where('id', '=', codeHash)
        .where('account', '=', id)
        .executeTakeFirst()
      return taken.numDeletedRows === 1n
    }),
})

export const createAccounts = (working: Working): Accounts => ({
  ...reading(working),
  ...taking(working),
  add: ({ id, login, name, role, person, isActive }, act) =>
    working.change(async (transaction) => {
      const row: AccountRow = {
        id,
        version: 1,
        login,
        name,
        role,
        person,
        password_hash: null,
        totp_secret: null,
        totp_step: null,
        is_active: isActive ? 1 : 0,
        updated_at: act.at.toISOString(),
      }
      const taken = await transaction
        .selectFrom('account')
        .select('id')
        .where((each) => each.or([each('login', '=', login), each('id', '=', id)]))
        .executeTakeFirst()
      if (taken !== undefined) return false
      await transaction.insertInto('account').values(row).execute()
      await recordAccess(transaction, { ...lineOf(row, 'added'), action: 'insert' }, act)
      return true
    }),
  describe: (id, version, { name, role, person, isActive }, act) =>
    working.change(async (transaction) => {
      const row = await rowOf(transaction, id)
      if (row === undefined || row.version !== version) return 'conflict'
      const staysOwner = role === 'owner' && isActive
      if (!staysOwner && (await isLastOwner(transaction, row))) return 'last-owner'
      const columns = { name, role, person, is_active: isActive ? 1 : 0 }
      await changed(transaction, row, { did: 'described', columns }, act)
      return 'done'
    }),
  setPassword: (id, hash, act) =>
    working.change(async (transaction) => {
      const row = await rowOf(transaction, id)
      if (row === undefined) return
      await changed(transaction, row, { did: 'password set', columns: { password_hash: hash } }, act)
    }),
  setSecondFactor: (id, factor, act) =>
    working.change((transaction) => replaceFactor(transaction, id, factor, act)),
})
