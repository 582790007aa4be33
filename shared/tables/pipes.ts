import type { PipeSystem } from './pipe-system.ts'
import { METAL_AND_PVC_PIPES } from './pipes-metal-and-pvc.ts'
import { POLYETHYLENE_PIPES } from './pipes-polyethylene.ts'

/** Every pipe system with its sizes. */
export const PIPE_SYSTEMS: readonly PipeSystem[] = [...POLYETHYLENE_PIPES, ...METAL_AND_PVC_PIPES]

/** Their ids, for fields that offer a choice; a test keeps it in step with the table. */
export const PIPE_SYSTEM_IDS = [
  'hdpe-ips',
  'pe-gas',
  'pe-cts',
  'pex-cts',
  'pe-iso',
  'pe-dips',
  'hdpe-conduit',
  'duct-metric',
  'microduct',
  'copper-b88',
  'copper-metric',
  'steel',
  'metal-conduit',
  'pvc-pressure',
  'pvc-conduit',
  'pvc-sewer',
] as const
