import { ROLE_NAMES, type RoleName } from '../../../shared/contracts/access.ts'
import type { NounPath } from '../../store/nouns.ts'

export type Role = RoleName

export const roleNamed = (word: string): Role | null => ROLE_NAMES.find((role) => role === word) ?? null

/**
 * none: not even read · read · own: read all, make new ones, change those made by oneself or assigned to one · all:
 * change any.
 */
export type Right = 'none' | 'read' | 'own' | 'all'

/** What each role may do with each noun: the one place it is said. An owner may do everything. */
const RIGHTS: Readonly<Record<NounPath, Readonly<Record<Exclude<Role, 'owner'>, Right>>>> = {
  crossings: { estimator: 'all', 'crew-lead': 'own', mechanic: 'read', viewer: 'read' },
  jobs: { estimator: 'all', 'crew-lead': 'own', mechanic: 'read', viewer: 'read' },
  customers: { estimator: 'all', 'crew-lead': 'read', mechanic: 'none', viewer: 'none' },
  tools: { estimator: 'read', 'crew-lead': 'read', mechanic: 'all', viewer: 'read' },
  compressors: { estimator: 'read', 'crew-lead': 'read', mechanic: 'all', viewer: 'read' },
  hoses: { estimator: 'read', 'crew-lead': 'read', mechanic: 'all', viewer: 'read' },
  crews: { estimator: 'all', 'crew-lead': 'read', mechanic: 'read', viewer: 'read' },
  people: { estimator: 'all', 'crew-lead': 'read', mechanic: 'read', viewer: 'none' },
  'rate-books': { estimator: 'all', 'crew-lead': 'none', mechanic: 'none', viewer: 'none' },
  quotes: { estimator: 'own', 'crew-lead': 'none', mechanic: 'none', viewer: 'none' },
  days: { estimator: 'all', 'crew-lead': 'own', mechanic: 'read', viewer: 'read' },
  'bore-logs': { estimator: 'own', 'crew-lead': 'own', mechanic: 'read', viewer: 'read' },
  'sign-offs': { estimator: 'own', 'crew-lead': 'own', mechanic: 'own', viewer: 'read' },
  attachments: { estimator: 'own', 'crew-lead': 'own', mechanic: 'own', viewer: 'read' },
  settings: { estimator: 'read', 'crew-lead': 'read', mechanic: 'read', viewer: 'read' },
  'tool-templates': { estimator: 'read', 'crew-lead': 'read', mechanic: 'all', viewer: 'read' },
  parts: { estimator: 'read', 'crew-lead': 'read', mechanic: 'all', viewer: 'read' },
  inspections: { estimator: 'read', 'crew-lead': 'own', mechanic: 'all', viewer: 'read' },
}

export const rightOf = (role: Role, noun: NounPath): Right => (role === 'owner' ? 'all' : RIGHTS[noun][role])
