import type { SourceKey } from '../sources.ts'

export type PolyethyleneGrade = 'pe2708' | 'pe3608' | 'pe4710'

/** One pound-force per square inch in pascals: 0.45359237 kg × 9.80665 m/s² over (0.0254 m)². */
export const PSI_PA = (0.45359237 * 9.80665) / 0.0254 ** 2

/** Tensile yield at 73 °F, psi: 3,500 and 3,200 read in articles and a textbook, 2,600 from memory. */
export const YIELD_PSI: Readonly<Record<PolyethyleneGrade, number>> = {
  pe2708: 2600,
  pe3608: 3200,
  pe4710: 3500,
}

/** Safe pull stress at 73 °F by duration, psi, as a reprint of the Plastics Pipe Institute handbook has it. */
export const SAFE_PULL_STRESS: {
  readonly source: SourceKey
  readonly rows: readonly {
    readonly upToH: number
    readonly psi: Readonly<Record<PolyethyleneGrade, number>>
  }[]
} = {
  source: 'PpiHandbook',
  rows: [
    { upToH: 0.5, psi: { pe2708: 1100, pe3608: 1400, pe4710: 1500 } },
    { upToH: 1, psi: { pe2708: 1050, pe3608: 1350, pe4710: 1400 } },
    { upToH: 12, psi: { pe2708: 850, pe3608: 1100, pe4710: 1150 } },
    { upToH: 24, psi: { pe2708: 800, pe3608: 1050, pe4710: 1100 } },
  ],
}
