import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { GroundEvidence } from '../../../shared/core/ground/ground-state.ts'
import { groundState } from '../../../shared/core/ground/ground-state.ts'
import { SOIL_WORDS, STATE_WORDS } from '../../../shared/tables/trade-soil-words.ts'
import { SPANISH_SOIL_WORDS } from '../../../shared/tables/trade-soil-words-es.ts'
import { USCS_SOILS } from '../../../shared/tables/uscs-soils.ts'
import { drive, NOTHING, stateOf } from './penetration-of.ts'

describe('trade words', () => {
  it.each([
    ['firm moist clay', 'CL', 'medium-stiff', 'consistency'],
    ['stiff sandy clay', 'CL', 'stiff', 'consistency'],
    ['loose sugar sand', 'SP', 'loose', 'consistency'],
    ['moist clay loam', 'CL', 'medium-stiff', 'word'],
    ['sandy loam', 'SM', 'loose', 'word'],
    ['Very stiff, red clay', 'CL', 'very-stiff', 'consistency'],
    ['gumbo', 'CH', 'medium-stiff', 'word'],
    ['silt', 'ML', 'stiff', 'word'],
    ['hard packed silty sand', 'SM', 'very-dense', 'consistency'],
    ['gravelly sand', 'SW', 'medium-dense', 'word'],
    ['bank-run gravel', 'GW', 'dense', 'word'],
    ['peat', 'PT', 'very-soft', 'word'],
    ['topsoil', 'OL', 'soft', 'word'],
    ['boulder clay', 'CL', 'hard', 'word'],
    ['loam o/ clay', 'CL', 'medium-stiff', 'word'],
    ['clay fill', 'CL', 'medium-stiff', 'word'],
    ['old trench', 'SM', 'loose', 'word'],
    ['dense clay', 'CL', 'very-stiff', 'consistency'],
  ])('%s', (word, uscs, stateCode, decidedBy) => {
    expect(stateOf({ word })).toMatchObject({ uscs, stateCode, decidedBy })
  })

  it('every word of the table is read, beside every word of state', () => {
    for (const { words, uscs } of SOIL_WORDS) {
      for (const word of words) {
        expect(stateOf({ word }).uscs).toBe(uscs)
        for (const state of STATE_WORDS) stateOf({ word: `${state.words[0] ?? ''} ${word}` })
      }
    }
  })

  it.each([
    ['arcilla', 'CL', 'medium-stiff', 'word'],
    ['Arcilla arenosa firme', 'CL', 'medium-stiff', 'consistency'],
    ['arcilla roja, dura', 'CL', 'hard', 'consistency'],
    ['arena suelta', 'SP', 'loose', 'consistency'],
    ['limo húmedo', 'ML', 'stiff', 'word'],
    ['grava', 'GW', 'medium-dense', 'word'],
    ['arcilla plástica rígida con pocas piedras', 'CH', 'stiff', 'consistency'],
    ['arena limosa muy compacta', 'SM', 'very-dense', 'consistency'],
    ['relleno de zanja', 'SM', 'loose', 'word'],
    ['tierra con arcilla', 'CL', 'medium-stiff', 'word'],
    ['migajón arenoso', 'SM', 'loose', 'word'],
  ])('in Spanish: %s', (word, uscs, stateCode, decidedBy) => {
    expect(stateOf({ word })).toMatchObject({ uscs, stateCode, decidedBy })
  })

  it('every Spanish word is the soil of its English one, and no English word is taken for another', () => {
    for (const [english, words] of Object.entries(SPANISH_SOIL_WORDS)) {
      for (const word of words) {
        expect(stateOf({ word }), word).toEqual(stateOf({ word: english }))
        expect(SOIL_WORDS.some((soil) => soil.words.includes(word))).toBe(false)
      }
    }
  })

  it.each([
    ['barro firme', ['arcilla firme', 'lodo firme']],
    ['ripio', ['grava', 'escombro']],
    ['arena con cascajo', ['arena con grava', 'arena con escombro']],
    ['tierra', ['tierra vegetal', 'arcilla', 'limo', 'relleno']],
  ])('%s means one thing here and another there: asked', (word, values) => {
    const found = groundState({ ...NOTHING, word })
    expect(found).toMatchObject({ ok: false, issues: [{ path: 'word', code: 'ask', given: word }] })
    expect(found.ok ? [] : found.issues[0]?.candidates?.map(({ value }) => value)).toEqual(values)
    for (const value of values) expect(stateOf({ word: value }).uscs).toMatch(/^[A-Z]{2}/)
  })

  it('every group of the table is computed', () => {
    for (const { symbol } of USCS_SOILS) {
      const { rateMPerMin } = drive(stateOf({ uscs: symbol }), 0.075, 1)
      expect(rateMPerMin).toBeGreaterThan(0)
    }
  })

  it('an unknown word is refused with the nearest', () => {
    const found = groundState({ ...NOTHING, word: 'stiff cley' })
    expect(found).toMatchObject({
      ok: false,
      issues: [{ path: 'word', code: 'unknown-choice', given: 'stiff cley' }],
    })
    expect(found.ok ? [] : found.issues[0]?.candidates?.map(({ value }) => value)).toContain('clay')
  })

  it('nothing said is asked for', () => {
    expect(groundState(NOTHING)).toMatchObject({ ok: false, issues: [{ code: 'required' }] })
    expect(groundState({ ...NOTHING, word: 'stiff' })).toMatchObject({
      ok: false,
      issues: [{ code: 'required' }],
    })
  })

  it('a wrong group, consistency and number are all reported at once', () => {
    const found = groundState({ ...NOTHING, uscs: 'XX', consistency: 'crunchy', sptN: -1 })
    expect(found.ok ? [] : found.issues.map(({ path }) => path)).toEqual(['sptN', 'consistency', 'uscs'])
  })

  it.each(['caliche', 'hardpan', 'shale', 'chalk', 'rock', 'clay with cobbles', 'frozen clay', 'rubble'])(
    '%s is computed but marked outside the model',
    (word) => {
      expect(stateOf({ word }).outsideModel).toBe(true)
    },
  )

  it('loose and wet sand grips badly and closes; firm clay does neither', () => {
    expect(stateOf({ word: 'loose sand' })).toMatchObject({ poorGrip: true, holeCloses: true })
    expect(stateOf({ word: 'wet sand' })).toMatchObject({ poorGrip: true, holeCloses: true })
    expect(stateOf({ uscs: 'SP', sptN: 20, waterTableM: 0.5 })).toMatchObject({
      poorGrip: true,
      holeCloses: true,
    })
    expect(stateOf({ word: 'firm clay' })).toMatchObject({ poorGrip: false, holeCloses: false })
  })
})

describe('what decides', () => {
  const ALL: Partial<GroundEvidence> = {
    word: 'soft clay',
    consistency: 'hard',
    undrainedStrengthPa: 60e3,
    pocketPenetrometerPa: 160e3,
    dcpMPerBlow: 0.02,
    sptN: 15,
    dug: 'bar',
  }

  it('goes from measured strength down to the word', () => {
    const order = [
      ['undrainedStrengthPa', 'undrained-strength'],
      ['pocketPenetrometerPa', 'pocket-penetrometer'],
      ['dcpMPerBlow', 'dcp'],
      ['sptN', 'spt'],
      ['consistency', 'consistency'],
    ] as const
    let evidence = ALL
    for (const [key, decidedBy] of order) {
      expect(stateOf(evidence).decidedBy).toBe(decidedBy)
      evidence = { ...evidence, [key]: null }
    }
    expect(stateOf(evidence)).toMatchObject({ decidedBy: 'consistency', stateCode: 'soft' })
    expect(stateOf({ word: 'clay', dug: 'bar' }).decidedBy).toBe('digging')
    expect(stateOf({ word: 'clay' }).decidedBy).toBe('word')
  })

  it('a pocket penetrometer reads twice the undrained strength', () => {
    expect(stateOf({ uscs: 'CL', pocketPenetrometerPa: 150e3 }).undrainedStrengthPa).toBe(75e3)
  })

  it('only a word spreads wider than a measurement', () => {
    expect(stateOf({ uscs: 'CL', sptN: 8 }).strengthCov).toBe(0.3)
    expect(stateOf({ word: 'clay' }).strengthCov).toBeCloseTo(0.45, 12)
  })

  it('shoring is class C by itself, and B only within reach of a good dry reading', () => {
    expect(stateOf({ word: 'clay' })).toMatchObject({ oshaType: 'C', oshaBestType: 'C' })
    expect(stateOf({ uscs: 'CL', pocketPenetrometerPa: 100e3 })).toMatchObject({
      oshaType: 'C',
      oshaBestType: 'B',
    })
    expect(stateOf({ uscs: 'CL', pocketPenetrometerPa: 100e3, fill: true }).oshaBestType).toBe('C')
    expect(stateOf({ uscs: 'CL', pocketPenetrometerPa: 55e3 }).oshaBestType).toBe('C')
  })
})

describe('harder evidence never gives a faster rate', () => {
  const DIAMETERS = [0.045, 0.075, 0.13] as const
  const symbols = USCS_SOILS.map(({ symbol }) => symbol)

  const slowsDown = (
    of: (x: number) => Partial<GroundEvidence>,
    groups: readonly string[],
    range: readonly [number, number],
  ): void => {
    fc.assert(
      fc.property(
        fc.constantFrom(...groups),
        fc.constantFrom(...DIAMETERS),
        fc.double({ min: range[0], max: range[1], noNaN: true }),
        fc.double({ min: range[0], max: range[1], noNaN: true }),
        (uscs, diameterM, a, b) => {
          const soft = drive(stateOf({ uscs, ...of(Math.min(a, b)) }), diameterM, 1)
          const hard = drive(stateOf({ uscs, ...of(Math.max(a, b)) }), diameterM, 1)
          expect(hard.rateMPerMin).toBeLessThanOrEqual(soft.rateMPerMin + 1e-12)
        },
      ),
      { numRuns: 400 },
    )
  }

  const fine = ['CL', 'CH', 'ML', 'MH', 'OH', 'CL-ML']
  it('blow count', () => slowsDown((sptN) => ({ sptN }), symbols, [0, 120]))
  it('undrained strength', () =>
    slowsDown((strength) => ({ undrainedStrengthPa: strength }), fine, [1e3, 600e3]))
  it('relative density', () =>
    slowsDown((relativeDensity) => ({ relativeDensity }), ['SP', 'SW', 'GW', 'SM', 'SC', 'GC'], [0, 1]))
  it('friction angle', () =>
    slowsDown((frictionAngleRad) => ({ frictionAngleRad }), ['SP', 'SM', 'SC', 'GM'], [0.3, 0.85]))
  it('cone', () => slowsDown((x) => ({ dcpMPerBlow: 0.1 - x }), symbols, [0, 0.098]))

  it('and a small step of evidence is a small step of rate', () => {
    for (const uscs of symbols) {
      for (let n = 0; n < 100; n += 0.05) {
        const here = drive(stateOf({ uscs, sptN: n }), 0.075, 1).rateMPerMin
        const next = drive(stateOf({ uscs, sptN: n + 0.05 }), 0.075, 1).rateMPerMin
        expect(Math.abs(here - next)).toBeLessThan(0.02)
      }
    }
  })
})

describe('one more stone', () => {
  it('never lowers obstruction or drift', () => {
    const steps = ['none', 'few', 'many', 'cobbles'] as const
    const words = SOIL_WORDS.flatMap((each) => each.words)
    for (const word of words) {
      for (const fill of [false, true]) {
        let before = stateOf({ word, fill, stones: 'none' })
        for (const stones of steps) {
          const after = stateOf({ word, fill, stones })
          expect(after.obstructionPer12M.low).toBeGreaterThanOrEqual(before.obstructionPer12M.low)
          expect(after.obstructionPer12M.likely).toBeGreaterThanOrEqual(before.obstructionPer12M.likely)
          expect(after.obstructionPer12M.high).toBeGreaterThanOrEqual(before.obstructionPer12M.high)
          expect(after.driftFactor).toBeGreaterThanOrEqual(before.driftFactor)
          before = after
        }
      }
    }
  })

  it('"few" said where nothing was said never lowers them either', () => {
    for (const { symbol: uscs } of USCS_SOILS) {
      const silent = stateOf({ uscs })
      const said = stateOf({ uscs, stones: 'few' })
      expect(said.obstructionPer12M.likely).toBeGreaterThanOrEqual(silent.obstructionPer12M.likely)
      expect(said.driftFactor).toBeGreaterThanOrEqual(silent.driftFactor)
    }
  })
})
