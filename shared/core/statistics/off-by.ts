import { bisect } from '../numerics/bisect.ts'
import { normalCdf, normalQuantile } from './normal.ts'

/** Chance that |y| stays within `withinM`, y normal. */
export function chanceWithin(meanM: number, sigmaM: number, withinM: number): number {
  if (sigmaM === 0) return Math.abs(meanM) <= withinM ? 1 : 0
  return normalCdf((withinM - meanM) / sigmaM) - normalCdf((-withinM - meanM) / sigmaM)
}

/** The share-quantile of |y|, y normal: a closed form about zero, else by halving. */
export function offByM(meanM: number, sigmaM: number, share: number): number {
  if (sigmaM === 0) return Math.abs(meanM)
  if (meanM === 0) return sigmaM * normalQuantile((1 + share) / 2)
  const farM = Math.abs(meanM) + sigmaM * normalQuantile((1 + share) / 2)
  return bisect((atM) => chanceWithin(meanM, sigmaM, atM) - share, 0, farM) ?? farM
}
