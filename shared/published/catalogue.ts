import type { PublishedCheck } from './shape.ts'

type Table = { readonly checks: readonly PublishedCheck[] }

/** Printed tables by name, loaded only when somebody looks: tests, the checks command, the workings page. */
export const PUBLISHED: Readonly<Record<string, () => Promise<Table>>> = {
  'us-standard-atmosphere-1976': () => import('./us-standard-atmosphere-1976.ts'),
  'open-library-air-points': () => import('./open-library-air-points.ts'),
  'cengel-friction-examples': () => import('./cengel-friction-examples.ts'),
  'crane-air-examples': () => import('./crane-air-examples.ts'),
  'air-second-calculation': () => import('./air-second-calculation.ts'),
  'schedule-40-air-table': () => import('./schedule-40-air-table.ts'),
  'orifice-table': () => import('./orifice-table.ts'),
  'usbr-altitude-table': () => import('./usbr-altitude-table.ts'),
  'temperature-altitude-row': () => import('./temperature-altitude-row.ts'),
  'ornl-receiver-tests': () => import('./ornl-receiver-tests.ts'),
  'moist-air': () => import('./moist-air.ts'),
  'engine-and-power': () => import('./engine-and-power.ts'),
  'air-components': () => import('./air-components.ts'),
  'fm-5-434-altitude': () => import('./fm-5-434-altitude.ts'),
  'locate-calendar': () => import('./locate-calendar.ts'),
  noise: () => import('./noise.ts'),
  'hose-thrust': () => import('./hose-thrust.ts'),
  'burning-line': () => import('./burning-line.ts'),
  deviation: () => import('./deviation.ts'),
  contact: () => import('./contact.ts'),
  geodesic: () => import('./geodesic.ts'),
  pits: () => import('./pits.ts'),
  clearance: () => import('./clearance.ts'),
  'ground-cavity': () => import('./ground-cavity.ts'),
  'ground-spt': () => import('./ground-spt.ts'),
  'ground-movement': () => import('./ground-movement.ts'),
  'ground-vibration': () => import('./ground-vibration.ts'),
  'ground-penetration': () => import('./ground-penetration.ts'),
  'pipe-handling': () => import('./pipe-handling.ts'),
  'pipe-sizes': () => import('./pipe-sizes.ts'),
  'pull-loads': () => import('./pull-loads.ts'),
}
