import type { Standing } from '../sources/shape.ts'
import type { SourceKey } from '../sources.ts'

export type PipeMaterial = 'pe' | 'pex' | 'copper' | 'pvc' | 'steel'
export type PipeFamily = 'ips' | 'cts' | 'dips'

/** Lengths in the unit of the system, as the standard prints them. */
export type PipeSize = {
  /** Nominal size as printed: '3/4', '1-1/4', '63', '14/10'. */
  readonly size: string
  readonly od: number
  readonly odMax?: number
  /** Wall by the name it goes under: 'SDR9', 'SCH40', 'K'. */
  readonly walls: Readonly<Record<string, number>>
  /** Where the kind of wall changes the outside diameter too. */
  readonly odByWall?: Readonly<Record<string, number>>
  readonly dn?: number
  readonly family?: PipeFamily
  /** Lengths coils are sold in. */
  readonly coilsFt?: readonly number[]
  readonly lbPerFt?: Readonly<Record<string, number>>
}

export type PipeSystem = {
  readonly id: string
  readonly name: string
  readonly standards: readonly string[]
  readonly source: SourceKey
  /** Of the outside diameters; the walls have their own. */
  readonly standing: Standing
  readonly wallStanding: Standing
  readonly unit: 'in' | 'mm'
  readonly material: PipeMaterial
  /** The weakest polyethylene commonly sold as this pipe: taken for a pull limit when none is named. */
  readonly resin?: 'pe2708' | 'pe3608'
  readonly joined: 'fused or coiled' | 'coiled' | 'glued' | 'belled' | 'threaded or welded'
  /** Outside diameter of the bell over that of the pipe. */
  readonly bellFactor?: number
  readonly family?: PipeFamily
  /** Taken when no wall is named, and said to be assumed. */
  readonly usualWall?: string
  /** Present where any dimension ratio gives the wall: diameter over ratio, to 0.001, but not under this. */
  readonly ratioWallFloor?: number
  readonly note: string
  readonly sizes: readonly PipeSize[]
}
