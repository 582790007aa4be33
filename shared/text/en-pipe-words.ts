/** What pipes are called. */
export const EN_PIPE_WORDS = {
  pipeSystem: {
    'hdpe-ips': 'polyethylene pipe (IPS)',
    'pe-gas': 'polyethylene gas pipe',
    'pe-cts': 'polyethylene water tubing (CTS)',
    'pex-cts': 'PEX tubing (CTS)',
    'pe-iso': 'polyethylene pipe',
    'pe-dips': 'polyethylene pipe (DIPS)',
    'hdpe-conduit': 'HDPE conduit',
    'duct-metric': 'polyethylene duct',
    microduct: 'microduct',
    'copper-b88': 'copper water tube',
    'copper-metric': 'copper tube',
    steel: 'steel pipe',
    'metal-conduit': 'metal conduit',
    'pvc-pressure': 'PVC pressure pipe',
    'pvc-conduit': 'PVC conduit',
    'pvc-sewer': 'PVC sewer pipe',
    'by-diameter': 'pipe by its diameter',
  },
  pipeWall: { schedule: 'schedule', type: 'type', wall: 'wall' },
} as const
