import { ENGINES } from '../core/air/engine-power.ts'
import { AIR_REFERENCES } from '../core/air/site-air.ts'
import { component } from './air-line.ts'
import { nounFile } from './noun-parts.ts'
import { choice, quantity, shortText } from './quantity-field.ts'

/** A compressor; the keys are those of a crossing's `air.compressor`. */
export const compressorFile = nounFile('underlane/compressor@1', {
  serial: shortText(80).optional(),
  freeAirDelivery: quantity('volumeFlow', 'refuse', { min: 1e-4, max: 2 }),
  pressure: quantity('gaugePressure', 'refuse', { min: 1e5, max: 2.5e6 }),
  unloadPressure: quantity('gaugePressure', 'refuse', { min: 1e5, max: 3e6 }).optional(),
  reference: choice(AIR_REFERENCES).optional(),
  engine: choice(ENGINES).optional(),
  receiver: quantity('volume', 'refuse', { min: 1e-4, max: 100 }).optional(),
  /** The oiler and separator that ride with it, as in a crossing's `air`. */
  oiler: component('refuse').optional(),
  separator: component('refuse').optional(),
})
