import { relation } from '../relation.ts'

const error = (words: string, max: number) =>
  ({ kind: 'movement', words, range: { min: 0, max, hardMin: 0, hardMax: 100 } }) as const

/** Distance from the bore's axis to the near edge of another line that a plan must show. It rules; chances never relax it. */
export const requiredClearance = relation({
  id: 'required-clearance',
  title: 'Clearance required',
  formula: 'C = standard + tool radius + drift + exposure error + layout error',
  sources: ['ClearanceSum'],
  inputs: {
    standard: {
      kind: 'depth',
      words: 'clearance the owner or the rule asks for',
      range: { min: 0.1, max: 3, hardMin: 0, hardMax: 100 },
    },
    toolRadius: {
      kind: 'diameter',
      words: 'half the diameter of the tool or expander',
      range: { min: 0.015, max: 0.2, hardMin: 0, hardMax: 2 },
    },
    driftAllowance: error('drift that may have built up there; never zero for an unguided tool', 2),
    exposureError: error('error of the measured position of the other line', 1),
    layoutError: { ...error('error of setting out the bore', 0.5), default: 0 },
  },
  outputs: { required: { kind: 'depth', words: 'from the axis of the bore to the near edge of the line' } },
  fn: (given) => ({
    requiredM:
      given.standardM + given.toolRadiusM + given.driftAllowanceM + given.exposureErrorM + given.layoutErrorM,
  }),
  checks: ['clearance'],
  remarks: 'Heave, displacement of the other line and vibration are checks of their own.',
})
