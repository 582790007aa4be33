import { createHash } from 'node:crypto'
import { canonicalJson } from '../../shared/contracts/canonical-json.ts'
import type { RevisionRow } from './tables.ts'

/** What the first line of a history follows. */
export const CHAIN_START = '0'.repeat(64)

export type UnsealedLine = Omit<RevisionRow, 'hash'>

/**
 * SHA-256 over the hash of the line before and this line's own content, named here one by one: a column added later
 * must not change what was sealed earlier.
 */
export function revisionHash(previousHash: string, line: UnsealedLine): string {
  const { seq, noun, id, version, format, action, who, acted_at, acted_from, request_key, document } = line
  const content = {
    seq,
    noun,
    id,
    version,
    format,
    action,
    who,
    acted_at,
    acted_from,
    request_key,
    document,
  }
  return createHash('sha256')
    .update(`${previousHash}\n${canonicalJson(content)}`)
    .digest('hex')
}

export type ChainEnd = { readonly seq: number; readonly hash: string }

/** A line that is not what was written, or not where it was written. */
export type BrokenLine = {
  readonly seq: number
  readonly noun: string
  readonly id: string
  readonly version: number
  readonly what: 'line-missing' | 'line-altered'
}

/** Follows the chain by one line: its new end, or what is wrong. */
export function followChain(end: ChainEnd, line: RevisionRow): ChainEnd | BrokenLine {
  const { seq, noun, id, version, hash } = line
  if (seq !== end.seq + 1) return { seq, noun, id, version, what: 'line-missing' }
  if (hash !== revisionHash(end.hash, line)) return { seq, noun, id, version, what: 'line-altered' }
  return { seq, hash }
}

export const isBroken = (followed: ChainEnd | BrokenLine): followed is BrokenLine => 'what' in followed
