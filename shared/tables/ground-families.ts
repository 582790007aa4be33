import type { SourceKey } from '../sources.ts'

/** Nodes of a table: straight lines in between, the end value beyond. */
export type Nodes = readonly (readonly [x: number, y: number])[]

/** What the tables of soils are drawn from, and when somebody last went over them. */
export const GROUND_TABLES: { readonly sources: readonly SourceKey[]; readonly checkedOn: string } = {
  sources: ['PenetrationModel', 'SoilRanges', 'Em111022504', 'CaltransShoring', 'TerzaghiPeck', 'Uscs'],
  checkedOn: '2026-11-24',
}

/**
 * Clay by undrained strength (kPa). Rows: soft N 3, firm N 6, stiff N 11, very stiff N 22, hard clay or till N 40.
 * Cone factor, adhesion and rate factor by judgement, held against the published mean cone factor and the trade's bands.
 */
export const CLAY = {
  strengthKpaByN: [
    [0, 6],
    [3, 18],
    [6, 37],
    [11, 75],
    [22, 150],
    [40, 280],
    [100, 700],
  ],
  unitWeightKn: [
    [8, 15.7],
    [18, 17],
    [37, 18],
    [75, 19],
    [150, 20],
    [280, 21],
  ],
  rigidityIndex: [
    [18, 120],
    [37, 120],
    [75, 100],
    [150, 80],
    [280, 80],
  ],
  shaftAdhesion: [
    [18, 0.3],
    [37, 0.3],
    [75, 0.28],
    [150, 0.25],
    [280, 0.22],
  ],
  rateFactor: [
    [18, 1.35],
    [37, 1.35],
    [75, 1.3],
    [150, 1.25],
    [280, 1.2],
  ],
  quakeDivisor: [
    [18, 60],
    [37, 90],
    [75, 120],
    [150, 120],
    [280, 120],
  ],
  heaveLow: [
    [37, 0.9],
    [75, 0.7],
  ],
  heaveMid: [
    [37, 1],
    [75, 0.95],
  ],
  heaveHigh: [
    [37, 1],
    [75, 1.05],
  ],
  tipAdhesion: 0.5,
  tipFactor: 1.8,
  strengthCov: 0.3,
  modelCov: 0.25,
} as const satisfies Record<string, Nodes | number>

/** Soils with cohesion and friction, by N. The rows of the model: stiff silt (N 11) and moist clayey sand (N 20). */
export type Frictional = {
  readonly cohesionKpa: Nodes
  readonly frictionDeg: Nodes
  readonly dilationDeg: Nodes
  readonly unitWeightKn: Nodes
  readonly quakeDivisor: Nodes
  readonly stiffnessRatio: number
  readonly interfaceDeg: number
  readonly tipMultiplier: number
}

const SILT_UNIT_WEIGHT: Nodes = [
  [1, 14.9],
  [3, 16.2],
  [6, 17.5],
  [11, 18.5],
  [22, 19.6],
  [45, 20.6],
]
/** Bands of the granular states: middles N 2, 7, 20, 40, 65. */
const SAND_UNIT_WEIGHT: Nodes = [
  [2, 14.6],
  [7, 17.1],
  [20, 19],
  [40, 20.2],
  [65, 21.6],
]
const GRAVEL_UNIT_WEIGHT: Nodes = [
  [2, 15.4],
  [7, 17.9],
  [20, 19.8],
  [40, 21],
  [65, 22.5],
]
const GRANULAR_DILATION: Nodes = [
  [2, 0],
  [7, 0],
  [20, 2],
  [40, 5],
  [65, 9],
]
/** Few plastic fines: it dilates nearly as clean sand does. */
const SILTY_DILATION: Nodes = [
  [2, 0],
  [7, 1],
  [20, 5],
  [40, 8],
  [65, 11],
]
const GRANULAR_QUAKE: Nodes = [
  [7, 60],
  [20, 90],
  [40, 120],
]

const nodesAtBands = (values: readonly [number, number, number, number, number]): Nodes => [
  [2, values[0]],
  [7, values[1]],
  [20, values[2]],
  [40, values[3]],
  [65, values[4]],
]

export const FRICTIONAL = {
  silt: {
    cohesionKpa: [
      [1, 3],
      [3, 4],
      [6, 6],
      [11, 8],
      [22, 12],
      [45, 20],
    ],
    frictionDeg: [
      [1, 27],
      [3, 28],
      [6, 29.5],
      [11, 31],
      [22, 33],
      [45, 35],
    ],
    dilationDeg: [
      [3, 0],
      [6, 0.5],
      [11, 1],
      [22, 2],
      [45, 3],
    ],
    unitWeightKn: SILT_UNIT_WEIGHT,
    quakeDivisor: [
      [3, 60],
      [11, 90],
      [22, 120],
    ],
    stiffnessRatio: 160,
    interfaceDeg: 18,
    tipMultiplier: 1,
  },
  clayeySand: {
    cohesionKpa: nodesAtBands([7, 9, 12, 15, 18]),
    frictionDeg: nodesAtBands([26, 28, 32, 37, 41]),
    dilationDeg: GRANULAR_DILATION,
    unitWeightKn: SAND_UNIT_WEIGHT,
    quakeDivisor: GRANULAR_QUAKE,
    stiffnessRatio: 180,
    interfaceDeg: 20,
    tipMultiplier: 1,
  },
  siltySand: {
    cohesionKpa: nodesAtBands([3, 4, 5, 7, 9]),
    frictionDeg: nodesAtBands([29, 31, 35, 39, 42]),
    dilationDeg: SILTY_DILATION,
    unitWeightKn: SAND_UNIT_WEIGHT,
    quakeDivisor: GRANULAR_QUAKE,
    stiffnessRatio: 250,
    interfaceDeg: 20,
    tipMultiplier: 1,
  },
  clayeyGravel: {
    cohesionKpa: nodesAtBands([5, 6, 8, 10, 12]),
    frictionDeg: nodesAtBands([27, 29, 33, 38, 42]),
    dilationDeg: GRANULAR_DILATION,
    unitWeightKn: GRAVEL_UNIT_WEIGHT,
    quakeDivisor: GRANULAR_QUAKE,
    stiffnessRatio: 180,
    interfaceDeg: 22,
    tipMultiplier: 1.3,
  },
  siltyGravel: {
    cohesionKpa: nodesAtBands([2, 3, 4, 6, 8]),
    frictionDeg: nodesAtBands([30, 32, 36, 40, 43]),
    dilationDeg: SILTY_DILATION,
    unitWeightKn: GRAVEL_UNIT_WEIGHT,
    quakeDivisor: GRANULAR_QUAKE,
    stiffnessRatio: 250,
    interfaceDeg: 22,
    tipMultiplier: 1.3,
  },
} as const satisfies Record<string, Frictional>

export const FRICTIONAL_COMMON = {
  shaftRatio: 0.012,
  rateFactor: 1.2,
  /** Of cohesion; the friction angle varies by 2 degrees beside it. */
  strengthCov: 0.4,
} as const

/** Clean sand and gravel by relative density. Rows of the model: 0.25, 0.50, 0.75, and gravelly at 0.85. */
export type Clean = {
  readonly criticalDeg: Nodes
  readonly unitWeightKn: Nodes
  readonly shaftRatio: Nodes
  readonly interfaceDeg: number
  readonly tipMultiplier: number
}

export const CLEAN = {
  sand: {
    criticalDeg: [
      [0.25, 32],
      [0.5, 33],
    ],
    unitWeightKn: [
      [0.05, 15.3],
      [0.25, 16.5],
      [0.5, 18],
      [0.75, 19.5],
      [0.98, 20.9],
    ],
    shaftRatio: [
      [0.25, 0.008],
      [0.5, 0.007],
    ],
    interfaceDeg: 20,
    tipMultiplier: 1,
  },
  gravelly: {
    criticalDeg: [[0.85, 36]],
    unitWeightKn: [
      [0.05, 16.2],
      [0.5, 18.9],
      [0.85, 21],
      [0.98, 21.8],
    ],
    shaftRatio: [[0.85, 0.006]],
    interfaceDeg: 22,
    tipMultiplier: 1.3,
  },
} as const satisfies Record<string, Clean>

export const CLEAN_COMMON = {
  quakeDivisor: [
    [0.25, 60],
    [0.5, 90],
    [0.75, 120],
  ],
  rateFactor: 1.1,
  /** Standard deviation of relative density. */
  densitySd: 0.1,
} as const satisfies Record<string, Nodes | number>

export const GRANULAR_TIP_FACTOR = 2.2
export const GRANULAR_MODEL_COV = 0.35

/** Relative density by N: limits of EM 1110-2-2504 Table 3-1 (15 % at 4, 35 % at 10, 65 % at 30, 85 % at 50), loosest and densest kept. */
export const DENSITY_BY_N: Nodes = [
  [0, 0.05],
  [4, 0.15],
  [10, 0.35],
  [30, 0.65],
  [50, 0.85],
  [80, 0.98],
]
/** Friction angle by N, same table: 28° at N 4, 30° at 10, 36° at 30, 41° at 50; for reading a stated angle back. */
export const N_BY_FRICTION_DEG: Nodes = [
  [26, 0],
  [28, 4],
  [30, 10],
  [36, 30],
  [41, 50],
  [45, 80],
]

/** Volume factor of heave by N, granular: low, middle, high. */
export const GRANULAR_HEAVE = {
  low: nodesAtBands([-0.3, 0, 0.5, 0.8, 0.9]),
  mid: nodesAtBands([0.2, 0.4, 0.8, 1.1, 1.2]),
  high: nodesAtBands([0.5, 0.8, 1.1, 1.4, 1.5]),
} as const
export const PEAT_HEAVE = { low: 0.3, mid: 0.6, high: 1 } as const

/**
 * N by the penetration of a hand cone (m per blow), clay and granular: middles of the bands of remembered rates and cone readings;
 * in between straight in logarithms. Our judgement.
 */
export const N_BY_DCP: { readonly cohesive: Nodes; readonly granular: Nodes } = {
  cohesive: [
    [0.003, 70],
    [0.0055, 40],
    [0.008, 22],
    [0.0126, 11],
    [0.0245, 6],
    [0.039, 3],
    [0.08, 1],
  ],
  granular: [
    [0.003, 80],
    [0.0069, 40],
    [0.0158, 20],
    [0.0316, 7],
    [0.07, 2],
  ],
}

/** N by how the pit dug: common practice has the words, the numbers are our judgement. */
export const N_BY_DIGGING = {
  easy: { cohesive: 4, granular: 7 },
  firm: { cohesive: 9, granular: 20 },
  bar: { cohesive: 22, granular: 40 },
  struggled: { cohesive: 40, granular: 55 },
} as const

/** States by name: N of their middle, and the bands (Terzaghi & Peck; EM 1110-2-2504) that name a found N. */
export const COHESIVE_STATES = [
  { code: 'very-soft', n: 1, below: 2 },
  { code: 'soft', n: 3, below: 4 },
  { code: 'medium-stiff', n: 6, below: 8 },
  { code: 'stiff', n: 11, below: 15 },
  { code: 'very-stiff', n: 22, below: 30 },
  { code: 'hard', n: 40, below: Number.POSITIVE_INFINITY },
] as const
export const GRANULAR_STATES = [
  { code: 'very-loose', n: 2, below: 4 },
  { code: 'loose', n: 7, below: 10 },
  { code: 'medium-dense', n: 20, below: 30 },
  { code: 'dense', n: 40, below: 50 },
  { code: 'very-dense', n: 65, below: Number.POSITIVE_INFINITY },
] as const

/** Chance that something stops the bore, per 12 m: common practice, no source. */
export const OBSTRUCTION_PER_12_M = {
  clean: { low: 0.01, likely: 0.015, high: 0.02 },
  unknown: { low: 0.02, likely: 0.06, high: 0.08 },
  ordinary: { low: 0.04, likely: 0.06, high: 0.08 },
  gravelly: { low: 0.08, likely: 0.12, high: 0.2 },
  stony: { low: 0.15, likely: 0.22, high: 0.3 },
  cobbles: { low: 0.5, likely: 0.6, high: 0.75 },
} as const

/** Factor on the drift of the tool: uniform clay or silt, layered or fill, gravelly, some cobbles. */
export const DRIFT = { uniform: 0.7, layered: 1, gravelly: 1.5, cobbles: 2.5 } as const
