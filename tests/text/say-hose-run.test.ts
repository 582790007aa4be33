import { expect, test } from 'vitest'
import { saidHoseRun, saidReach } from '../../shared/text/say-hose-run.ts'

const US = { lang: 'en', system: 'us' } as const
const SI = { lang: 'en', system: 'si' } as const

test.each([
  [24.22, '79 ft', '24 m'],
  [143.2, '460 ft', '140 m'],
  [300, '980 ft', '300 m'],
  [3446, '11000 ft', '3400 m'],
  [-100, '-330 ft', '-100 m'],
  [0, '0 ft', '0 m'],
])('%s m goes as far as %s or %s, never further', (metres, feet, inMetres) => {
  expect(saidReach(metres, US).replace('−', '-')).toBe(feet)
  expect(saidReach(metres, SI).replace('−', '-')).toBe(inMetres)
})

test.each([
  [15.8, '52 ft', '16 m'],
  [15.24, '50 ft', '16 m'],
  [30, '99 ft', '30 m'],
])('%s m of hose to lay out is %s or %s, so that it reaches', (metres, feet, inMetres) => {
  expect(saidHoseRun(metres, US)).toBe(feet)
  expect(saidHoseRun(metres, SI)).toBe(inMetres)
})
