import { z } from 'zod'
import {
  AIM_METHODS,
  type AimInput,
  OBSERVATION_METHODS,
  type ObservationInput,
} from '../core/plan/crossing-input.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

/** What people call a look at the tool. */
const METHOD_WORDS = {
  'first-meter': 'first-metre',
  'first metre': 'first-metre',
  'first meter': 'first-metre',
  'first-foot': 'first-metre',
  pothole: 'seen',
  hole: 'seen',
  transmitter: 'sonde',
  wire: 'hose-wire',
  'by ear': 'ear',
  sound: 'ear',
} as const

/** Where the tool was found on its way: right and low of the planned line, left and high with a minus. */
export const observation = (bare: BareNumbers) =>
  z
    .strictObject({
      station: quantity('length', bare, { min: 0, max: 1000 }),
      method: choice(OBSERVATION_METHODS, METHOD_WORDS),
      right: orNull(quantity('length', bare, { min: -5, max: 5 })),
      low: orNull(quantity('length', bare, { min: -5, max: 5 })),
      error: orNull(quantity('length', bare, { min: 0.001, max: 2 })),
      by: orNull(shortText(120)),
    })
    .transform((o, ctx): ObservationInput => {
      if (o.right === null && o.low === null) {
        addIssue(
          ctx,
          { code: 'required', accepted: 'how far right or how far low of the line; 0 for on it' },
          ['right'],
        )
      }
      if (o.method === 'ear' && o.low !== null) {
        addIssue(ctx, { code: 'inputs-conflict', accepted: 'left or right only: a sound tells no depth' }, [
          'low',
        ])
      }
      return {
        stationM: o.station,
        method: o.method,
        rightM: o.right,
        lowM: o.low,
        errorM: o.error,
        by: o.by,
      }
    })

/** How the tool is aimed, or how far out it may be over the length of its body. */
export const aim = (bare: BareNumbers) =>
  z
    .strictObject({
      method: orNull(choice(AIM_METHODS)),
      error: orNull(quantity('length', bare, { min: 0.0005, max: 0.1 })),
      layout: orNull(quantity('length', bare, { min: 0, max: 2 })),
    })
    .transform((a): AimInput => ({ method: a.method, errorM: a.error, layoutM: a.layout }))
