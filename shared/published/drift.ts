import type { PublishedCheck } from './shape.ts'

const GRAYBILL = { relation: 'drift-to-limit', source: 'GraybillIyer', standing: 'second hand' } as const
const CRYSTAL = {
  times: '2,4,6,8,10,12,14,16,18,20,22,24,26,28',
  values: '0.08,1.12,4.43,4.98,4.92,7.18,5.57,8.40,8.81,10.81,11.16,10.12,13.12,15.04',
} as const

export const checks: readonly PublishedCheck[] = [
  {
    ...GRAYBILL,
    name: 'thermostat set so that one reading is 104',
    given: {
      times: '96,98,100,102,104,106,108,110',
      values: '95.71,98.16,99.52,102.09,103.79,106.18,108.14,110.21',
      limit: '104',
      confidence: '0.95',
      of: 'reading',
    },
    expected: { at: { printed: '103.995' }, from: { printed: '103.4' }, to: { printed: '104.6' } },
  },
  {
    ...GRAYBILL,
    name: 'reaction chamber to 400 on the mean',
    given: {
      times: '0,10,20,30,40,50,60,70,80,90,100',
      values: '206.36,225.52,252.18,289.33,318.11,349.49,383.03,410.70,444.40,469.14,501.16',
      limit: '400',
      confidence: '0.99',
    },
    expected: { at: { printed: '66.5' }, from: { printed: '65.07' }, to: { printed: '68.03' } },
  },
  {
    ...GRAYBILL,
    name: 'crystal growth, time to a mean of 5 g',
    given: { ...CRYSTAL, limit: '5', confidence: '0.90' },
    expected: { at: { printed: '9.93' }, from: { printed: '8.65' }, to: { printed: '11.05' } },
  },
  {
    ...GRAYBILL,
    source: 'InverseRegression',
    standing: 'published',
    name: 'crystal growth, time to a mean of 8 g',
    given: { ...CRYSTAL, limit: '8', confidence: '0.95' },
    expected: { at: { printed: '15.8882' }, from: { printed: '14.6590' }, to: { printed: '17.1596' } },
  },
]
