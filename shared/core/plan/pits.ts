import { pitVolume } from '../digsafe/pit-volume.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine } from './bore-line.ts'
import type { CrossingInput, EndKind, OverKind } from './crossing-input.ts'
import type { PitPart } from './plan.ts'

/** 29 CFR 1926.651(c)(2) and .652(a)(1): access from 4 ft, a protective system from 5 ft, measured at the floor. */
export const LADDER_FROM_M = 1.2192
export const PROTECT_FROM_M = 1.524

const SIDES = { launch: 'ends.launch', reception: 'ends.reception' } as const

const DUG_ENDS: readonly EndKind[] = ['pit', 'keyhole', 'inside']
const PAVED: readonly OverKind[] = ['road', 'drive', 'slab', 'pavers', 'walk']

export const isPavedAt = (line: BoreLine, stationM: number): boolean =>
  line.reaches.some((r) => stationM >= r.fromM && stationM <= r.toM && PAVED.includes(r.kind))

/** Every hole to dig, middle pits once each, with what their floor depth triggers. */
export function pitsPart(
  input: CrossingInput,
  line: BoreLine,
  tool: { readonly lengthM: number; readonly diameterM: number },
  assumed: Assumed,
  trace: Trace,
): PitPart[] {
  for (const side of ['launch', 'reception'] as const) {
    const assumedPit = { standing: 'common practice', source: 'CommonPractice' } as const
    if (!input.ends[side].isSaid) assumed.note({ name: SIDES[side], value: 'pit', unit: '', ...assumedPit })
  }
  const belowAxisM = tool.diameterM / 2 + assumed.use('pit.cradle') + assumed.use('pit.sump')
  const last = line.shots.length - 1
  const stations = [0, ...line.shots.map((shot) => shot.toM)]
  return stations.flatMap((atM, index): PitPart[] => {
    const serves = index === 0 ? 'launch' : index === last + 1 ? 'reception' : 'middle'
    const kind =
      serves === 'launch'
        ? input.ends.launch.kind
        : serves === 'reception'
          ? input.ends.reception.kind
          : 'pit'
    if (!DUG_ENDS.includes(kind)) return []
    const floorDepthM = line.axisDepthM(atM) + belowAxisM
    const isShored = floorDepthM >= PROTECT_FROM_M || isPavedAt(line, atM)
    const lengthM =
      serves === 'reception' ? assumed.use('pit.exitLength') : tool.lengthM + assumed.use('pit.workingLength')
    const widthM = assumed.use('pit.width')
    // Dug with upright faces: from 5 ft on, and in pavement, they are boxed or shored, not laid back.
    const { volumeM3 } = trace.run(
      pitVolume,
      { lengthM, widthM, depthM: floorDepthM, slope: 0 },
      `pit at ${serves}`,
    )
    return [
      {
        atM,
        serves,
        kind,
        floorDepthM,
        lengthM,
        widthM,
        needsLadder: floorDepthM >= LADDER_FROM_M,
        needsProtection: floorDepthM >= PROTECT_FROM_M,
        shored: isShored,
        volumeM3,
      },
    ]
  })
}
