import { describe, expect, test } from 'vitest'
import { planOf, planOfDemo } from '../../support/crossings.ts'

const INCH = 0.0254
const gas = (change: Record<string, unknown> = {}) => ({
  kind: 'gas',
  station: '20 ft',
  depth: '20 in',
  depthTo: 'top',
  diameter: '2 in',
  evidence: 'exposed',
  ...change,
})
const withLines = (...utilities: Record<string, unknown>[]) => planOfDemo('firm-clay-service', { utilities })

describe('an exposed main above the bore', () => {
  const { clearances } = withLines(gas())
  const [line] = clearances
  test('the separation runs from the axis to its underside, by local depth', () => {
    // Axis at station 20 of 42 ft between 48 and 45 in: 48 − 3·20/42 in; underside 22 in.
    expect(line?.separationM).toBeCloseTo((48 - (3 * 20) / 42 - 22) * INCH, 9)
    expect(line?.gapM).toBeCloseTo((line?.separationM ?? 0) - 1.25 * INCH, 9)
  })
  test('what is required is standard + half the tool + drift + error of exposing, as the sum says', () => {
    const parts = line?.parts
    expect(parts?.standardM).toBeCloseTo(12 * INCH, 12)
    expect(parts?.toolRadiusM).toBeCloseTo(1.25 * INCH, 12)
    expect(parts?.exposureM).toBe(0.03)
    const sum = Object.values(parts ?? {}).reduce((total, each) => total + each, 0)
    expect(line?.requiredM).toBeCloseTo(sum, 12)
  })
  test('drift is never zero for an unguided tool', () => expect(line?.parts.driftM).toBeGreaterThan(0))
})

test('the datum matters: top, centre and bottom of a 2 in line lie an inch apart', () => {
  const at = (depthTo: string) => withLines(gas({ depthTo })).clearances[0]?.separationM ?? 0
  expect(at('centre') - at('top')).toBeCloseTo(INCH, 9)
  expect(at('bottom') - at('centre')).toBeCloseTo(INCH, 9)
})

test('an owner’s clearance replaces ours, and without a name behind it something is missing', () => {
  const plan = withLines(gas({ ownerClearance: '24 in' }))
  expect(plan.clearances[0]?.parts.standardM).toBeCloseTo(24 * INCH, 12)
  expect(plan.release.reasons.map((each) => each.code)).toContain('clearance-without-name')
  expect(plan.assumptions.find((each) => each.name === 'utilities.0.ownerClearance')?.standing).toBe(
    'your value',
  )
})

test('a line seen through its hole starts the drift anew for the next one', () => {
  const alone = withLines(gas({ station: '30 ft' })).clearances[0]
  const after = withLines(gas({ station: '25 ft' }), gas({ station: '30 ft' })).clearances[1]
  expect(after?.parts.driftM).toBeLessThan(alone?.parts.driftM ?? 0)
  expect(after?.requiredM).toBeGreaterThan((after?.parts.standardM ?? 0) + 0.03)
})

test('a marked line holds, whatever its depth is said to be, and has no chance of contact', () => {
  const plan = withLines(gas({ evidence: 'marked' }))
  expect(plan.release.status).toBe('hold')
  expect(plan.clearances[0]).toMatchObject({ contactProbability: null, reason: 'depth-not-measured' })
})

test('a line with no depth has no separation, and says why', () => {
  const plan = withLines({ kind: 'telecom', station: '12 ft', evidence: 'records' })
  expect(plan.clearances[0]).toMatchObject({ separationM: null, shortM: null, reason: 'no-depth' })
  expect(plan.release.reasons.map((each) => each.code)).toContain('line-depth-not-known')
})

test('only a gravity line may be proved another way than by exposing it', () => {
  const sewer = gas({ kind: 'sewer', depth: '9 ft', diameter: '8 in', evidence: 'proved' })
  expect(withLines(sewer).release.reasons.map((each) => each.code)).not.toContain('line-not-exposed')
  expect(withLines({ ...sewer, kind: 'gas' }).release.reasons.map((each) => each.code)).toContain(
    'line-not-exposed',
  )
})

test('too close: held, short by so much, with two ways out', () => {
  const plan = withLines(gas({ depth: '34 in', station: '36 ft' }))
  const line = plan.clearances[0]
  expect(line?.shortM).toBeGreaterThan(0)
  expect(line?.wayOut).toMatchObject({ direction: 'deeper', moveM: line?.shortM })
  expect(line?.wayOut?.otherEndShortM).toBeLessThan(line?.shortM ?? 0)
  expect(plan.release.status).toBe('hold')
  expect(plan.release.reasons[0]).toMatchObject({ code: 'clearance-short', kind: 'rule' })
})

test('a line alongside is judged sideways at the far end', () => {
  const plan = withLines({ kind: 'water', offset: '2 ft', diameter: '6 in', evidence: 'exposed' })
  expect(plan.clearances[0]).toMatchObject({ stationM: null, reason: 'parallel', contactProbability: null })
  expect(plan.clearances[0]?.separationM).toBeCloseTo(21 * INCH, 9)
})

test('an answer that is no answer holds', () => {
  const locate = {
    jurisdiction: 'US-VA',
    ticket: { starts: '2026-11-25T07:00', expires: '2026-12-15T07:00' },
    responses: [{ owner: 'Town water', answer: 'no reply' }],
  }
  expect(planOfDemo('short-side-water').release.status).toBe('check')
  expect(planOfDemo('short-side-water', { locate }).release.status).toBe('hold')
})

test('an empty list of lines counts only with a name under it', () => {
  const { utilitiesAsked: _gone, ...rest } = planless()
  expect(planOf(rest).release.reasons.map((each) => each.code)).toContain('none-here-not-signed')
})

const planless = (): Record<string, unknown> => ({
  name: 'Unsigned',
  line: { length: '20 ft' },
  depth: { launch: '4 ft', reception: '4 ft', to: 'centre' },
  ground: [{ word: 'clay' }],
  pipes: [{ system: 'pe-cts', size: '1 in', sdr: 9 }],
  tool: { diameter: '2.5 in' },
  air: {
    compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
    hoses: [{ bore: '3/4 in', length: '50 ft' }],
  },
  utilities: [],
  utilitiesAsked: { by: 'A. Name', on: '2026-11-20' },
})

test('a bore that passes over a line is told to go shallower, never deeper into it', () => {
  const plan = withLines(gas({ depth: '58 in', station: '36 ft' }))
  expect(plan.clearances[0]?.shortM).toBeGreaterThan(0)
  expect(plan.clearances[0]?.wayOut?.direction).toBe('shallower')
})

describe('a line whose size nobody gave', () => {
  const { diameter: _gone, ...bare } = gas()
  test('measured to its top, with the bore under it: no gap and no chance, for its underside is not known', () => {
    expect(withLines(bare).clearances[0]).toMatchObject({
      separationM: null,
      shortM: null,
      contactProbability: null,
      reason: 'no-size',
    })
  })
  test('measured to its underside: the gap is known, the chance is not', () => {
    const line = withLines({ ...bare, depthTo: 'bottom', depth: '22 in' }).clearances[0]
    expect(line?.separationM).toBeCloseTo((48 - (3 * 20) / 42 - 22) * INCH, 9)
    expect(line).toMatchObject({ contactProbability: null, reason: 'no-size' })
  })
})
