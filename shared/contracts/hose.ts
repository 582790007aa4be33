import { hoseKeys } from './air-line.ts'
import { nounFile } from './noun-parts.ts'

/**
 * A length of hose; the keys are those of a crossing's `air.hoses`. `lossFactor` and `measuredOn` are a gauge reading of this
 * very hose, and the day of it.
 */
export const hoseFile = nounFile('underlane/hose@1', hoseKeys('refuse'))
