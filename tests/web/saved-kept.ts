import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import type { JsonObject } from '../../web/state/json.ts'

export const ID = '11111111-1111-4111-8111-111111111111'

/** A crossing as the server answers it. */
export function keptAs(
  version: number,
  document: JsonObject = FIRST_PRESET,
  more: Partial<KeptCrossing> = {},
): KeptCrossing {
  return {
    id: ID,
    version,
    format: 'underlane/crossing@1',
    name: String(document.name),
    updatedAt: '2026-11-25T08:00:00.000Z',
    deletedAt: null,
    demo: false,
    status: 'hold',
    engine: ENGINE_VERSION,
    document: JSON.parse(JSON.stringify(document)),
    inputSha256: null,
    result: null,
    issues: [],
    ...more,
  }
}
