import type { PublishedCheck } from './shape.ts'

type Table = { readonly checks: readonly PublishedCheck[] }

/** Printed tables by name, loaded only when somebody looks: tests, the checks command, the workings page. */
export const PUBLISHED: Readonly<Record<string, () => Promise<Table>>> = {
  deviation: () => import('./deviation.ts'),
  contact: () => import('./contact.ts'),
  geodesic: () => import('./geodesic.ts'),
  pits: () => import('./pits.ts'),
  clearance: () => import('./clearance.ts'),
}
