import type { PublishedCheck } from './shape.ts'

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'required-clearance',
    name: '4 in tool, 30 ft along, line exposed and taped',
    given: {
      standard: '12 in',
      toolRadius: '2 in',
      driftAllowance: '3.6 in',
      exposureError: '30 mm',
      layoutError: '0 in',
    },
    expected: { requiredM: { printed: '18.8', unit: 'in' } },
    source: 'ClearanceSum',
    standing: 'our judgement',
  },
  {
    relation: 'required-clearance',
    name: '75 mm tool, 10 m along, two per cent of drift',
    given: { standard: '250 mm', toolRadius: '37.5 mm', driftAllowance: '200 mm', exposureError: '0 mm' },
    expected: { requiredM: { printed: '487.5', unit: 'mm' } },
    source: 'ClearanceSum',
    standing: 'our judgement',
  },
]
