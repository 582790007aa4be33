import type { CLEAN, FRICTIONAL } from './ground-families.ts'

export type UscsSoil = {
  readonly symbol: string
  readonly name: string
  readonly profile:
    | { readonly family: 'clay'; readonly unitWeightOffsetKn: number }
    | {
        readonly family: 'frictional'
        readonly row: keyof typeof FRICTIONAL
        readonly scale: 'cohesive' | 'granular'
      }
    | { readonly family: 'sand'; readonly row: keyof typeof CLEAN }
  /** N where nothing but the group is known. */
  readonly defaultN: number
  readonly abrasivityClass: 1 | 2 | 3 | 4 | 5
  readonly isGravel?: true
  readonly isOrganic?: true
}

const clay = (
  symbol: string,
  name: string,
  unitWeightOffsetKn: number,
  defaultN: number,
  organic = false,
): UscsSoil => ({
  symbol,
  name,
  profile: { family: 'clay', unitWeightOffsetKn },
  defaultN,
  abrasivityClass: 1,
  ...(organic ? { isOrganic: true as const } : {}),
})

/**
 * Groups of ASTM D2487 and the family each is computed with. Unit weight offsets against lean clay, default N and abrasivity:
 * our judgement inside the ranges of EM 1110-2-2504, Caltrans and Terzaghi & Peck. Borderline groups follow the finer part where
 * that is plastic, the coarser where the fines are few.
 */
export const USCS_SOILS: readonly UscsSoil[] = [
  clay('CL', 'lean clay', 0, 8),
  clay('CL-ML', 'silty clay', 0, 7),
  clay('CH', 'fat clay', -0.8, 8),
  clay('CL-CH', 'clay of medium plasticity', -0.4, 8),
  clay('MH', 'elastic silt', -1.6, 7),
  clay('OL', 'organic silt or clay', -2.2, 4, true),
  clay('OH', 'organic clay', -2.9, 3, true),
  clay('PT', 'peat', -5.5, 1, true),
  {
    symbol: 'ML',
    name: 'silt',
    profile: { family: 'frictional', row: 'silt', scale: 'cohesive' },
    defaultN: 9,
    abrasivityClass: 2,
  },
  ...(
    [
      ['SC', 'clayey sand', 'clayeySand', 3],
      ['SC-SM', 'silty clayey sand', 'clayeySand', 3],
      ['SM', 'silty sand', 'siltySand', 3],
      ['GC', 'clayey gravel', 'clayeyGravel', 4],
      ['GC-GM', 'silty clayey gravel', 'clayeyGravel', 4],
      ['GM', 'silty gravel', 'siltyGravel', 4],
    ] as const
  ).map(
    ([symbol, name, row, abrasivityClass]): UscsSoil => ({
      symbol,
      name,
      profile: { family: 'frictional', row, scale: 'granular' },
      defaultN: symbol.startsWith('G') ? 25 : 15,
      abrasivityClass,
      ...(symbol.startsWith('G') ? { isGravel: true as const } : {}),
    }),
  ),
  ...(
    [
      ['SP', 'poorly graded sand'],
      ['SW', 'well-graded sand'],
      ['SP-SM', 'sand with silt'],
      ['SP-SC', 'sand with clay'],
      ['SW-SM', 'well-graded sand with silt'],
      ['SW-SC', 'well-graded sand with clay'],
    ] as const
  ).map(
    ([symbol, name]): UscsSoil => ({
      symbol,
      name,
      profile: { family: 'sand', row: 'sand' },
      defaultN: 18,
      abrasivityClass: 4,
    }),
  ),
  ...(
    [
      ['GP', 'poorly graded gravel'],
      ['GW', 'well-graded gravel'],
      ['GP-GM', 'gravel with silt'],
      ['GP-GC', 'gravel with clay'],
      ['GW-GM', 'well-graded gravel with silt'],
      ['GW-GC', 'well-graded gravel with clay'],
    ] as const
  ).map(
    ([symbol, name]): UscsSoil => ({
      symbol,
      name,
      profile: { family: 'sand', row: 'gravelly' },
      defaultN: 30,
      abrasivityClass: 5,
      isGravel: true,
    }),
  ),
]
