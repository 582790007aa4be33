import type { EN_PIPE_WORDS } from './en-pipe-words.ts'

type SameWords = {
  readonly [Group in keyof typeof EN_PIPE_WORDS]: {
    readonly [Code in keyof (typeof EN_PIPE_WORDS)[Group]]: string
  }
}

/** Cómo se llaman los tubos. */
export const ES_PIPE_WORDS = {
  pipeSystem: {
    'hdpe-ips': 'tubo de polietileno (IPS)',
    'pe-gas': 'tubo de polietileno para gas',
    'pe-cts': 'tubo de polietileno para agua (CTS)',
    'pex-cts': 'tubo PEX (CTS)',
    'pe-iso': 'tubo de polietileno',
    'pe-dips': 'tubo de polietileno (DIPS)',
    'hdpe-conduit': 'ducto de polietileno (HDPE)',
    'duct-metric': 'ducto de polietileno',
    microduct: 'microducto',
    'copper-b88': 'tubo de cobre para agua',
    'copper-metric': 'tubo de cobre',
    steel: 'tubo de acero',
    'metal-conduit': 'tubo conduit metálico',
    'pvc-pressure': 'tubo de PVC a presión',
    'pvc-conduit': 'tubo conduit de PVC',
    'pvc-sewer': 'tubo de PVC para drenaje',
    'by-diameter': 'tubo por su diámetro',
  },
  pipeWall: { schedule: 'cédula', type: 'tipo', wall: 'pared' },
} as const satisfies SameWords
