import { z } from 'zod'
import type { AirPart } from '../core/plan/air-part.ts'

const number = z.number()
const share = number.min(0).max(1)

/** The air of a plan. What follows `ladder` came later: a stored result of an older engine has none of it. */
export const airPart = z.strictObject({
  compressorGaugePa: number,
  toolGaugePa: number,
  hoseLossPa: number,
  demandM3PerS: number,
  capacityM3PerS: number,
  marginFraction: number,
  limitedBy: z.enum(['tool', 'compressor', 'hose', 'engine', 'regulator']),
  unloadedGaugePa: number,
  flag: z.enum(['low', 'weak', 'good', 'high']),
  ladder: z.array(z.strictObject({ element: z.string(), inletGaugePa: number, outletGaugePa: number })),
  sagPa: z.exactOptional(number),
  mostAtToolGaugePa: z.exactOptional(number),
  band: z.exactOptional(
    z.strictObject({
      lowGaugePa: number.nullable(),
      highGaugePa: number,
      why: z.enum(['wall-and-couplings', 'reading']),
    }),
  ),
  tools: z.exactOptional(
    z.array(
      z.strictObject({
        branch: z.string(),
        isOurs: z.boolean(),
        gaugePa: number,
        flowM3PerS: number,
        state: z.enum(['starved', 'weak', 'good', 'high', 'choked']),
      }),
    ),
  ),
  site: z.exactOptional(
    z.strictObject({
      barometerPa: number,
      temperatureK: number,
      relativeHumidity: share,
      densityRatio: number,
      demandFactor: number,
      isEngineLimited: z.boolean(),
    }),
  ),
  receiver: z.exactOptional(
    z.strictObject({ volumeM3: number, timeS: number.nullable(), bridges: z.enum(['deficit', 'stop']) }),
  ),
  fuel: z.exactOptional(z.strictObject({ nowM3PerS: number, fullM3PerS: number, loadFraction: share })),
  water: z.exactOptional(
    z.strictObject({ atMachineKgPerS: number, downLineKgPerS: number, vapourKgPerS: number }).nullable(),
  ),
  exhaustK: z.exactOptional(number),
  oil: z.exactOptional(z.strictObject({ lowM3PerS: number, highM3PerS: number }).nullable()),
  hazard: z.exactOptional(
    z.strictObject({
      boreM: number,
      lengthM: number,
      thrustN: number,
      energyJ: number,
      needsCutOff: z.boolean(),
      mostGaugePa: number,
      ratedGaugePa: number.nullable(),
    }),
  ),
}) satisfies z.ZodType<AirPart>
