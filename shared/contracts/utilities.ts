import { z } from 'zod'
import { LEVELS_OF, QUALITY_LEVELS, QUALITY_SCHEMES } from '../core/digsafe/quality-levels.ts'
import {
  EVIDENCE,
  UTILITY_DEPTH_DATUMS,
  UTILITY_KINDS,
  type UtilityInput,
} from '../core/plan/crossing-input.ts'
import { civilDateTime } from './civil-text.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

/** What people call a line. */
const KIND_WORDS = {
  power: 'electric',
  'electric cable': 'electric',
  fiber: 'telecom',
  fibre: 'telecom',
  phone: 'telecom',
  cable: 'telecom',
  'natural gas': 'gas',
  'storm drain': 'storm',
  drain: 'sewer',
  lateral: 'sewer',
  sprinkler: 'irrigation',
} as const

const DATUM_MEANS = {
  top: 'depth to the top of the line, as a locator or a test hole reads it',
  centre: 'depth to its centre',
  bottom: 'depth to its underside',
} as const

/** When it was opened and measured, by whom, and where the photo is. */
const exposed = z.strictObject({
  on: orNull(civilDateTime),
  by: orNull(shortText(120)),
  photo: orNull(shortText(200)),
})

/** A line crossed, or one that runs alongside. A depth without its datum is asked about, never guessed. */
export const utility = (bare: BareNumbers) =>
  z
    .strictObject({
      kind: choice(UTILITY_KINDS, KIND_WORDS),
      station: orNull(quantity('length', bare, { min: 0, max: 1000 })),
      offset: orNull(quantity('length', bare, { min: -100, max: 100 })),
      depth: orNull(quantity('depth', bare, { min: 0, max: 30 })),
      depthTo: orNull(choice(UTILITY_DEPTH_DATUMS, { center: 'centre', axis: 'centre', invert: 'bottom' })),
      diameter: orNull(quantity('diameter', bare, { min: 0.002, max: 5 })),
      crossingAngle: orNull(quantity('angle', bare, { min: 0.0873, max: 3.0543 })),
      evidence: choice(EVIDENCE),
      private: z.boolean().optional(),
      owner: orNull(shortText(120)),
      ownerClearance: orNull(quantity('length', bare, { min: 0, max: 10 })),
      ownerClearanceBy: orNull(shortText(120)),
      from: orNull(quantity('length', bare, { min: 0, max: 1000 })),
      to: orNull(quantity('length', bare, { min: 0, max: 1000 })),
      material: orNull(shortText(60)),
      quality: orNull(z.strictObject({ scheme: choice(QUALITY_SCHEMES), level: choice(QUALITY_LEVELS) })),
      exposed: orNull(exposed),
    })
    .transform((u, ctx): UtilityInput => {
      if (u.depth !== null && u.depthTo === null) {
        addIssue(
          ctx,
          {
            code: 'ask',
            candidates: UTILITY_DEPTH_DATUMS.map((value) => ({ value, means: DATUM_MEANS[value] })),
          },
          ['depthTo'],
        )
      }
      if (u.station === null && u.offset === null) {
        addIssue(
          ctx,
          { code: 'required', accepted: 'station for a line that crosses, offset for one alongside' },
          ['station'],
        )
      }
      if (u.quality !== null && !LEVELS_OF[u.quality.scheme].includes(u.quality.level)) {
        addIssue(
          ctx,
          {
            code: 'unknown-choice',
            given: u.quality.level,
            accepted: LEVELS_OF[u.quality.scheme].join(', '),
          },
          ['quality', 'level'],
        )
      }
      return {
        kind: u.kind,
        stationM: u.station,
        offsetM: u.offset,
        depth: u.depth === null || u.depthTo === null ? null : { valueM: u.depth, to: u.depthTo },
        diameterM: u.diameter,
        crossingAngleRad: u.crossingAngle,
        evidence: u.evidence,
        private: u.private ?? false,
        owner: u.owner,
        ownerClearanceM: u.ownerClearance,
        ownerClearanceBy: u.ownerClearanceBy,
        fromM: u.from,
        toM: u.to,
        material: u.material,
        quality: u.quality,
        exposed: u.exposed,
      }
    })

export const utilitiesAsked = z.strictObject({ by: shortText(120), on: civilDateTime })
