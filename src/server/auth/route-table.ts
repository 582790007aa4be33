import { NOUN_PATHS, type NounPath } from '../../store/nouns.ts'

/** Who may use a route. */
export type Need =
  | { readonly by: 'anyone' }
  /** A person or a script. */
  | { readonly by: 'signed-in' }
  /** A person with a session: it is about themselves. */
  | { readonly by: 'person' }
  | { readonly by: 'owner' }
  /** Those who may show a crossing to people outside. */
  | { readonly by: 'sharer' }
  | { readonly by: 'noun'; readonly noun: NounPath; readonly act: 'read' | 'save' | 'change' }

const ANYONE: Need = { by: 'anyone' }
const SIGNED_IN: Need = { by: 'signed-in' }
const PERSON: Need = { by: 'person' }
const OWNER: Need = { by: 'owner' }
const SHARER: Need = { by: 'sharer' }

const nounRoutes = (noun: NounPath): Readonly<Record<string, Need>> => ({
  [`GET /api/${noun}`]: { by: 'noun', noun, act: 'read' },
  [`GET /api/${noun}/:id`]: { by: 'noun', noun, act: 'read' },
  [`GET /api/${noun}/:id/history`]: { by: 'noun', noun, act: 'read' },
  [`PUT /api/${noun}/:id`]: { by: 'noun', noun, act: 'save' },
  [`DELETE /api/${noun}/:id`]: { by: 'noun', noun, act: 'change' },
  [`POST /api/${noun}/:id/restore`]: { by: 'noun', noun, act: 'change' },
})

/** Every route of the API and who may use it. What is not here is answered to nobody; a test wants each one here. */
export const ROUTE_TABLE: Readonly<Record<string, Need>> = {
  'GET /api': ANYONE,
  'GET /api/page.css': ANYONE,
  'GET /api/openapi.json': ANYONE,
  'GET /api/health': ANYONE,
  'GET /api/schemas': ANYONE,
  'GET /api/schemas/:name': ANYONE,
  'GET /api/session': ANYONE,
  'POST /api/session': ANYONE,
  'DELETE /api/session': ANYONE,
  'POST /api/session/code': ANYONE,
  'POST /api/session/code/look': ANYONE,
  'POST /api/shared': ANYONE,
  'POST /api/plans': SIGNED_IN,
  'POST /api/release': SIGNED_IN,
  'GET /api/relations': SIGNED_IN,
  'GET /api/relations/:id': SIGNED_IN,
  'GET /api/session/devices': PERSON,
  'DELETE /api/session/devices/:id': PERSON,
  'POST /api/session/password': PERSON,
  'POST /api/session/second-factor': PERSON,
  'PUT /api/session/second-factor': PERSON,
  'POST /api/session/second-factor/off': PERSON,
  'GET /api/accounts': OWNER,
  'POST /api/accounts': OWNER,
  'PUT /api/accounts/:id': OWNER,
  'POST /api/accounts/:id/code': OWNER,
  'GET /api/tokens': OWNER,
  'POST /api/tokens': OWNER,
  'DELETE /api/tokens/:id': OWNER,
  'GET /api/shares': SHARER,
  'POST /api/shares': SHARER,
  'DELETE /api/shares/:id': SHARER,
  'GET /api/shares/:id/accesses': SHARER,
  ...Object.assign({}, ...NOUN_PATHS.map(nounRoutes)),
  'GET /api/attachments/:id/content': { by: 'noun', noun: 'attachments', act: 'read' },
  'PUT /api/attachments/:id/content': { by: 'noun', noun: 'attachments', act: 'change' },
}

const ENTRIES = Object.entries(ROUTE_TABLE).map(([route, need]) => {
  const [method = '', path = ''] = route.split(' ')
  return { method, steps: path.split('/'), need }
})

/** What a request needs, and the id in its path; null when the table does not know it. */
export function needOf(method: string, path: string): { readonly need: Need; readonly id: string } | null {
  const asked = method === 'HEAD' ? 'GET' : method
  const steps = path.replace(/\/$/, '').split('/')
  const fits = (pattern: readonly string[]) =>
    pattern.length === steps.length &&
    pattern.every((step, at) => (step.startsWith(':') ? steps[at] !== '' : step === steps[at]))
  const found = ENTRIES.find((entry) => entry.method === asked && fits(entry.steps))
  if (found === undefined) return null
  const id = steps[found.steps.findIndex((step) => step.startsWith(':'))] ?? ''
  // A route would read an encoded id as another one than is judged here; no id of ours needs it.
  if (found.need.by !== 'anyone' && id.includes('%')) return null
  return { need: found.need, id }
}
