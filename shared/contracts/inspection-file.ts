import { z } from 'zod'
import { INSPECTION_STEPS, isSized, MEASURES } from '../core/shop/template.ts'
import { day, idOf, nounFile } from './noun-parts.ts'
import { addIssue, choice, printable, quantity, shortText } from './quantity-field.ts'
import { partKey } from './tool-template-file.ts'

const MM_PER_M = 1000
const TILT = ['passed', 'failed'] as const

const reading = z
  .strictObject({
    part: partKey,
    key: partKey,
    value: quantity('movement', 'refuse', { min: -3, max: 3 }).optional(),
    grade: shortText(20).optional(),
  })
  .superRefine((found, ctx) => {
    const measure = MEASURES.find((each) => each === found.key)
    if (measure === undefined || !isSized(measure) || measure === 'stands-out') return
    if (found.value === undefined || found.value >= 0) return
    const millimetres = Number((found.value * MM_PER_M).toPrecision(6))
    const candidates = [{ value: `${-millimetres} mm`, means: 'the same without the minus sign' }]
    addIssue(ctx, { code: 'ask', given: printable(`${millimetres} mm`), candidates }, ['value'])
  })

/**
 * One look at one tool, in the order of the work. `confirmed` names the readings a person was asked about and stood by;
 * `replaced` the parts that went in new.
 */
export const inspectionFile = nounFile('underlane/inspection@1', {
  tool: idOf('the tool'),
  on: day,
  by: shortText(120),
  steps: z.array(choice(INSPECTION_STEPS)).max(20).optional(),
  tiltBefore: choice(TILT).optional(),
  tiltAfter: choice(TILT).optional(),
  stripped: z.boolean().optional(),
  readings: z.array(reading).max(400).optional(),
  replaced: z.array(partKey).max(60).optional(),
  confirmed: z.array(z.string().max(90)).max(400).optional(),
})
