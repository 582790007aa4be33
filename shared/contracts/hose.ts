import { nounFile } from './noun-parts.ts'
import { quantity } from './quantity-field.ts'

/** A length of hose; the keys are those of a crossing's `air.hoses`. */
export const hoseFile = nounFile('underlane/hose@1', {
  bore: quantity('diameter', 'refuse', { min: 0.003, max: 0.3 }),
  length: quantity('length', 'refuse', { min: 0.1, max: 1000 }),
})
