import { describe, expect, test } from 'vitest'
import { parseFleet } from '../../../shared/contracts/fleet.ts'
import { saidOfGround } from '../../../shared/core/plan/said-of-ground.ts'
import { shorterShots } from '../../../shared/core/plan/shorter-shots.ts'
import { whatMatters } from '../../../shared/core/plan/what-matters.ts'
import { type FleetTool, whichTool } from '../../../shared/core/plan/which-tool.ts'
import { A_CROSSING } from '../../cli/run-in-process.ts'
import { inputOf, planOf } from '../../support/crossings.ts'

const withGround = (...ground: object[]) => inputOf({ ...A_CROSSING, ground })

function said(ground: object) {
  const found = saidOfGround(withGround(ground))
  if (!found.ok) throw new Error(JSON.stringify(found.issues))
  const [first] = found.value
  if (!first) throw new Error('no ground')
  return first
}

describe('what was said of the ground', () => {
  test('the most direct decides, and what does not agree with it is shown', () => {
    const found = said({ uscs: 'CL', vane: '120 kPa', sptN: 4, dug: 'bar', consistency: 'very stiff' })
    expect(found.evidence.map(({ by, agreement }) => [by, agreement])).toEqual([
      ['vane', 'used'],
      ['spt', 'softer'],
      ['consistency', 'agrees'],
      ['digging', 'agrees'],
    ])
    expect(found.isDisputed).toBe(true)
  })

  test('one piece of evidence cannot disagree', () => {
    expect(said({ word: 'clay' }).evidence).toHaveLength(1)
    expect(said({ word: 'clay' }).isDisputed).toBe(false)
  })

  test('a vane in sand says nothing of it', () => {
    expect(said({ uscs: 'SP', sptN: 20, vane: '50 kPa' }).evidence.map(({ by }) => by)).toEqual(['spt'])
  })

  test('what a raw count would become is said, by depth and under water', () => {
    const codes = (ground: object) => said(ground).corrections.map(({ code }) => code)
    expect(codes({ uscs: 'SM', sptN: 25, waterTable: '1 ft' })).toEqual(['overburden', 'fine-sand'])
    expect(codes({ uscs: 'SP', sptN: 25 })).toEqual(['overburden'])
    expect(codes({ uscs: 'CL', sptN: 25 })).toEqual([])
    const fine = said({ uscs: 'SM', sptN: 25, waterTable: '1 ft' }).corrections[1]
    // 15 + 0.5 (25 − 15), the worked value of UFC 3-220-10.
    expect(fine?.toN).toBe(20)
  })

  test('frost is outside the model, and is held', () => {
    const plan = planOf({ ...A_CROSSING, ground: [{ uscs: 'CL', sptN: 9, frozen: true }] })
    expect(plan.release.reasons.map(({ code }) => code)).toContain('ground-outside-model')
  })
})

describe('what matters most', () => {
  test('the most telling first; knowing never leaves more than there was', () => {
    const found = whatMatters(withGround({ uscs: 'CL', sptN: 11 }))
    if (!found.ok) throw new Error('refused')
    const shares = found.value.matters.map(({ takesAway }) => takesAway)
    expect(shares.length).toBeGreaterThan(3)
    expect(shares).toEqual([...shares].sort((a, b) => b - a))
    expect(Math.max(...shares)).toBeLessThan(1)
    expect(found.value.matters[0]?.dimension).toBe('strength')
    for (const each of found.value.matters) {
      expect(each.badDayMPerS).toBeGreaterThan(found.value.badDayMPerS)
    }
  })

  test('more draws make the error of the draws smaller', () => {
    const errors = [128, 8192].map((draws) => {
      const errorsOfSeeds = [1, 5, 9, 13].map((seed) => {
        const found = whatMatters({ ...withGround({ uscs: 'CL', sptN: 11 }), spread: { seed, draws } })
        if (!found.ok || found.value.numericalErrorS === null) throw new Error('no error')
        return found.value.numericalErrorS
      })
      return errorsOfSeeds.reduce((sum, each) => sum + each, 0)
    })
    expect(errors[1] ?? 0).toBeLessThan((errors[0] ?? 0) / 4)
  })
})

function fleetOf(document: unknown): readonly FleetTool[] {
  const parsed = parseFleet(document)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues))
  return parsed.value
}

describe('which tool', () => {
  const fleet = fleetOf([
    { name: 'too small', diameter: '1 in' },
    { name: 'large', diameter: '6 in' },
    { name: 'ordinary', diameter: '2.5 in' },
    { name: 'cracked', diameter: '2.5 in', withdrawn: 'head cracked' },
  ])
  const ranked = whichTool(inputOf(A_CROSSING), fleet)

  test('the sane one first; out of use and too small last, each with its reason', () => {
    expect(ranked[0]?.name).toBe('ordinary')
    expect(
      ranked
        .slice(2)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['cracked', 'too small'])
    const small = ranked.find(({ name }) => name === 'too small')
    expect(small?.issues.map(({ code }) => code)).toEqual(['pipe-does-not-pass'])
    expect(small?.hammerS).toBeNull()
    const large = ranked.find(({ name }) => name === 'large')
    expect(large?.reasons.map(({ code }) => code)).toContain('cover-too-small')
  })

  test('order does not depend on the order of the shelf', () => {
    const again = whichTool(inputOf(A_CROSSING), [...fleet].reverse())
    expect(again.slice(0, 2).map(({ name }) => name)).toEqual(ranked.slice(0, 2).map(({ name }) => name))
  })

  test('a list that is none is refused with its path', () => {
    const parsed = parseFleet([{ name: 'x', diameter: 63 }])
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) expect(parsed.issues[0]?.path).toBe('0.diameter')
  })
})

describe('shorter shots', () => {
  const long = { ...A_CROSSING, line: { length: '100 ft' } }

  test('the fewest pits that bring the bore out where it should', () => {
    const found = shorterShots(inputOf(long), planOf(long))
    expect(found?.hitNow).toBeLessThan(0.9)
    expect(found?.hitProbability).toBeGreaterThanOrEqual(0.9)
    const pits = found?.pitsAtM.length ?? 0
    const fewer = planOf({
      ...long,
      shots: Array.from({ length: pits }, (_, at) => ({ to: `${(100 * (at + 1)) / pits} ft` })),
    })
    expect(fewer.deviation.hitProbability).toBeLessThan(0.9)
  })

  test('none where the bore lands well enough', () => {
    const short = { ...A_CROSSING, line: { length: '20 ft' } }
    expect(shorterShots(inputOf(short), planOf(short))).toBeNull()
  })
})
