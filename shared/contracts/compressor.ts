import { nounFile } from './noun-parts.ts'
import { quantity, shortText } from './quantity-field.ts'

/** A compressor; the keys are those of a crossing's `air.compressor`. */
export const compressorFile = nounFile('underlane/compressor@1', {
  serial: shortText(80).optional(),
  freeAirDelivery: quantity('volumeFlow', 'refuse', { min: 1e-4, max: 2 }),
  pressure: quantity('gaugePressure', 'refuse', { min: 1e5, max: 2.5e6 }),
})
