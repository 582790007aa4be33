import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import type { ClearancePart, RunPart, ShotPart } from '../../shared/core/plan/plan.ts'
import type { Say } from '../../shared/text/language.ts'
import { groundWords } from '../../shared/text/soil-words.ts'
import {
  clearanceSentence,
  contactSentence,
  verdictSentence,
  wayOutSentence,
} from '../../shared/text/verdict-sentence.ts'

const EN: Say = { lang: 'en', system: 'us' }
const ES: Say = { lang: 'es', system: 'si' }
const around = (p50: number) => ({ p10: p50 / 2, p50, p90: p50 * 2 })

const run: RunPart = {
  advanceMPerS: around(0.006),
  hammerTimeS: around(35 * 60),
  boreTimeS: around(60 * 60),
  crossingTimeS: around(4 * 3600),
  timeReason: null,
  giveUpTimeS: 5400,
  arrivalProbability: 14 / 15,
  refusalProbability: 0.01,
  blowRateHz: 6,
  blowEnergyJ: 100,
  setPerBlowM: 0.001,
}
const stretch = (uscs: string, stateCode: string): ShotPart['stretches'][number] => ({
  fromM: 0,
  toM: 6,
  uscs,
  stateCode,
  setPerBlowM: 0.001,
  advanceMPerS: 0.006,
  tipResistancePa: 1e6,
  buriedToGripM: 1,
})
const clay = [{ stretches: [stretch('CL', 'stiff')] }]

describe('the verdict', () => {
  test('ground, likely times, second tries', () => {
    expect(groundWords(clay, EN)).toBe('Stiff clay')
    const shots: ShotPart[] = []
    expect(verdictSentence({ run, shots: [...shots, shotOf(clay)] }, EN)).toBe(
      'Stiff clay. Likely 35 min of hammering, 60 min for the bore, 4 h for the whole crossing; 1 in 15 needs a second try.',
    )
    expect(verdictSentence({ run, shots: [shotOf(clay)] }, ES)).toBe(
      'Arcilla rígida. Lo probable: 35 min de golpeo, 60 min para la perforación, 4 h para todo el cruce; 1 de cada 15 necesita un segundo intento.',
    )
  })

  test('no times: says that too few arrive', () => {
    const none = { ...run, hammerTimeS: null, boreTimeS: null, crossingTimeS: null, arrivalProbability: 0.03 }
    const said = verdictSentence({ run: none, shots: [shotOf(clay)] }, EN)
    expect(said).toContain('Too few bores arrive to give a time: 1 in 33 gets there.')
    expect(said).not.toMatch(/second try| min /)
  })

  test('changes of ground are named once and agree in gender', () => {
    const two = [{ stretches: [stretch('CL', 'soft'), stretch('CL', 'soft'), stretch('ML', 'soft')] }]
    expect(groundWords(two, EN)).toBe('Soft clay, then soft silt')
    expect(groundWords(two, ES)).toBe('Arcilla blanda, luego limo blando')
  })
})

function shotOf([{ stretches }]: typeof clay | [{ stretches: ShotPart['stretches'] }]): ShotPart {
  const quantiles = { p50: 0.1, p90: 0.2 }
  const deviation = {
    lateralM: quantiles,
    verticalM: quantiles,
    hitProbability: 0.9,
    windowM: 0.3,
    gradeProbability: null,
  }
  const path = { points: [], observations: [], wideningSideways: 1, wideningVertical: 1 }
  return { fromM: 0, toM: 6, depthFromM: 1.2, depthToM: 1.2, run, deviation, path, clearances: [], stretches }
}

describe('the echo of depths', () => {
  const bore = { axisDepthM: 46.25 * 0.0254, boreDiameterM: 2.5 * 0.0254 }
  const gas = {
    kind: 'gas',
    depth: { valueM: 30 * 0.0254, to: 'top' },
    diameterM: 2.375 * 0.0254,
    stationM: 6,
    offsetM: null,
  } as const

  test('top and bottom of the line, top of the bore', () => {
    expect(clearanceSentence(gas, bore, EN)).toMatch(
      /^Gas: top at 30 in, bottom at 32-3\/8 in\. Your bore: top at 45 in, bottom at 47-1\/2 in\.$/,
    )
  })
  test('the datum moves it', () => {
    const toBottom = { ...gas, depth: { ...gas.depth, to: 'bottom' } } as const
    expect(clearanceSentence(toBottom, bore, EN)).toContain('top at 27-5/8 in, bottom at 30 in')
  })
  test('nothing is made up for what is not known', () => {
    expect(clearanceSentence({ ...gas, diameterM: null }, bore, EN)).toContain(
      'Gas: top at 30 in, size not known',
    )
    expect(clearanceSentence({ ...gas, depth: null }, bore, ES)).toContain('Gas: profundidad desconocida.')
    expect(clearanceSentence({ ...gas, stationM: null, offsetM: -0.9144 }, bore, EN)).toContain('3 ft from')
  })
})

describe('gap and chance', () => {
  const part: ClearancePart = {
    utility: 0,
    kind: 'gas',
    stationM: 6,
    axisDepthM: 1.2,
    separationM: 0.3,
    gapM: 0.254,
    requiredM: 0.4,
    shortM: 0.1016,
    parts: { standardM: 0.3, toolRadiusM: 0.03, driftM: 0.05, exposureM: 0.03, layoutM: 0 },
    driftFrom: { by: 'launch', stationM: 0 },
    displacementM: null,
    ppvMPerS: null,
    contactProbability: null,
    reason: 'depth-not-measured',
    wayOut: { direction: 'deeper', moveM: 0.1016, otherEndShortM: 0 },
  }
  test('short: the ways out', () => {
    expect(wayOutSentence(part, EN)).toBe(
      'Gap to the line 10 in. Short by 4 in: take the bore that much deeper; or launch from the other pit, which saves the drift.',
    )
    expect(wayOutSentence({ ...part, wayOut: null }, EN)).toContain('move the path away')
    expect(wayOutSentence({ ...part, gapM: -0.01 }, EN)).toMatch(/^On paper the bore runs into it\./)
    expect(wayOutSentence({ ...part, gapM: null, shortM: null }, EN)).toBe('')
  })
  test('no chance for a line nobody has measured; never under 1 in 1,000', () => {
    expect(contactSentence(part, EN)).toContain('has not been measured')
    const said = contactSentence({ contactProbability: 0.001, reason: null }, EN)
    expect(said).toContain('less than 1 in 1,000')
    expect(said).toContain('nothing about the others')
  })
})
