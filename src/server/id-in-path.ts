import type { Context } from 'hono'
import { z } from 'zod'
import type { AppEnv } from './api-error.ts'

const guid = z.guid()

/** Ids are compared as text, so they are always small letters; null for what is no UUID. */
export const uuidOf = (given: string): string | null => guid.safeParse(given).data?.toLowerCase() ?? null

/** The id of a path as it is kept; for what is no id of ours, one that nothing has. */
export const idInPath = (c: Context<AppEnv>): string => uuidOf(c.req.param('id') ?? '') ?? 'no-such-id'
