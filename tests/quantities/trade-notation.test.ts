import { describe, expect, it } from 'vitest'
import type { Kind } from '../../shared/core/kinds.ts'
import type { IssueCode } from '../../shared/core/outcome.ts'
import type { ParseOptions } from '../../shared/quantities/parse-quantity.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'

const FT = 0.3048
const IN = 0.0254

const read: readonly (readonly [text: string, kind: Kind, valueSi: number, options?: ParseOptions])[] = [
  ['42"', 'depth', 42 * IN],
  ["42'", 'length', 42 * FT],
  ["42'6", 'length', 42.5 * FT],
  ['3 ft 6', 'length', 3.5 * FT],
  ['35 ft 6', 'length', 35.5 * FT],
  ['42\'-6"', 'length', 42.5 * FT],
  ['42\' 6 1/2"', 'length', 510.5 * IN],
  ['42’-6”', 'length', 42.5 * FT],
  ['42′6″', 'length', 42.5 * FT],
  ["4''", 'diameter', 4 * IN],
  ["42'6''", 'length', 42.5 * FT],
  ['6½"', 'diameter', 6.5 * IN],
  ['½ in', 'diameter', 0.5 * IN],
  ['6 ½ in', 'diameter', 6.5 * IN],
  ['1 1/4 in', 'diameter', 1.25 * IN],
  ['1-1/4 in', 'diameter', 1.25 * IN],
  ['1.25"', 'diameter', 1.25 * IN],
  ['.5 in', 'diameter', 0.5 * IN],
  ['5/4 in', 'diameter', 1.25 * IN],
  ['4 ft 7-1/4 in', 'depth', 55.25 * IN],
  ['46 ft 6 in', 'length', 46.5 * FT],
  ['46 feet 6 inches', 'length', 46.5 * FT],
  ['46 ft, 6 in', 'length', 46.5 * FT],
  ['46 ft. 6 in.', 'length', 46.5 * FT],
  ['3/4 in', 'diameter', 0.75 * IN],
  ['1 m 20 cm', 'depth', 1.2],
  ['18" dp', 'depth', 18 * IN],
  ['6 ft deep', 'depth', 6 * FT],
  ['40 ft lg', 'length', 40 * FT],
  ['Ø32 mm', 'diameter', 0.032],
  ['1.2 M', 'length', 1.2],
  ['−3 ft', 'altitude', -3 * FT],
  ['1 200\u2009mm'.replace(' ', ''), 'length', 1.2],
  ['12\u00a0mm', 'movement', 0.012],
  ['12\u202fmm', 'movement', 0.012],
  ['5 mils', 'movement', 5e-3 * IN],
  ['185 cfm', 'volumeFlow', (185 * FT ** 3) / 60],
  ['185', 'volumeFlow', (185 * FT ** 3) / 60, { impliedUnit: 'cfm' }],
  ['185 cu. ft per minute', 'volumeFlow', (185 * FT ** 3) / 60],
  ['5.2 m³/min', 'volumeFlow', 5.2 / 60],
  ['100 psi', 'gaugePressure', 689_475.7293168361],
  ['100 PSI', 'gaugePressure', 689_475.7293168361],
  ['100 psig', 'gaugePressure', 689_475.7293168361],
  ['14.5 psia', 'absolutePressure', 99_973.98075094123],
  ['7 bar', 'gaugePressure', 7e5],
  ['7 bar(g)', 'gaugePressure', 7e5],
  ['29.92 inHg', 'absolutePressure', 29.92 * 3386.3886403],
  ['1.5 tsf', 'stress', 143_640.77694100753],
  ['1 MPa', 'stress', 1e6],
  ['1 mPa', 'stress', 1e-3],
  ['50 kpa', 'stress', 5e4],
  ['8C', 'temperature', 281.15],
  ['85F', 'temperature', (85 + 459.67) / 1.8],
  ['85 °F', 'temperature', (85 + 459.67) / 1.8],
  ['85 deg F', 'temperature', (85 + 459.67) / 1.8],
  ['-10 ℃', 'temperature', 263.15],
  ['18 °F', 'temperatureDifference', 10],
  ['10 K', 'temperatureDifference', 10],
  ['90 deg', 'angle', Math.PI / 2],
  ["12°30'", 'angle', (12.5 * Math.PI) / 180],
  ['4.167 mrad', 'angle', 0.004167],
  ['5.1 mrad/m^0.5', 'drift', 0.0051],
  ['5.1 mrad/√m', 'drift', 0.0051],
  ['1.2e-4 1/K', 'expansion', 1.2e-4],
  ['8e-5 per °F', 'expansion', 1.44e-4],
  ['12 mm', 'resistancePerBlow', 0.012],
  ['12 mm per blow', 'resistancePerBlow', 0.012],
  ['3 h 10 min', 'duration', 11_400],
  ['90 mins', 'duration', 5400],
  ['400 blows/min', 'frequency', 400 / 60],
  ['300 ft·lb', 'energy', 406.7453844994],
  ['900 lb', 'force', 900 * 0.45359237 * 9.80665],
  ['900 lb', 'mass', 900 * 0.45359237],
  ['120 pcf', 'density', 1922.2156047],
  ['120 pcf', 'unitWeight', 18_850.495658],
  ['2 %', 'ratio', 0.02],
  ['2 percent', 'ratio', 0.02],
  ['1 in 40', 'ratio', 1 / 40],
  ['1:40', 'ratio', 1 / 40],
  ['1.5H:1V', 'ratio', 1.5],
  ['1/4" per ft', 'ratio', 1 / 48],
  ['1/4 in per foot', 'ratio', 1 / 48],
  ['20 mm/m', 'ratio', 0.02],
  ['0.35', 'ratio', 0.35],
  ['1/2', 'ratio', 0.5],
  ['N=9', 'count', 9],
  ['N60 = 9', 'ratio', 9],
  ['92.5 dBA', 'count', 92.5],
  ['42', 'length', 42, { bare: 'si' }],
  ['42', 'length', 42 * FT, { bare: 'us' }],
  ['4', 'depth', 4 * FT, { bare: 'us' }],
  ['2.5', 'diameter', 2.5 * IN, { bare: 'us' }],
  ['100', 'gaugePressure', 689_475.7293168361, { bare: 'us' }],
  ['100', 'gaugePressure', 100, { bare: 'si' }],
  ['300', 'temperature', 300, { bare: 'si' }],
  ['85', 'temperature', (85 + 459.67) / 1.8, { bare: 'us' }],
]

describe('notations that are read', () => {
  for (const [text, kind, valueSi, options] of read) {
    it(`${text} as ${kind}`, () => {
      const found = parseQuantity(text, kind, options)
      if (!found.ok) throw new Error(JSON.stringify(found.issue))
      expect(Math.abs(found.valueSi - valueSi)).toBeLessThanOrEqual(1e-9 * Math.abs(valueSi))
    })
  }

  it('takes a number only as a bare number', () => {
    expect(parseQuantity(42, 'length', { bare: 'si' })).toEqual({ ok: true, valueSi: 42 })
    expect(parseQuantity(0.4, 'ratio')).toEqual({ ok: true, valueSi: 0.4 })
    expect(parseQuantity(42, 'length')).toMatchObject({ ok: false, issue: { code: 'ask' } })
  })

  it('echoes decimal feet as a tape shows them', () => {
    expect(parseQuantity('4.6 ft', 'depth')).toMatchObject({
      ok: true,
      echo: { reads: '4 ft 7-1/4 in', not: '4 ft 6 in' },
    })
    expect(parseQuantity('4.25 ft', 'depth')).toMatchObject({ echo: { reads: '4 ft 3 in', not: null } })
    expect(parseQuantity('4 ft', 'depth')).toEqual({ ok: true, valueSi: 1.2192 })
  })
})

const refused: readonly (readonly [
  text: unknown,
  kind: Kind,
  code: IssueCode,
  candidates: readonly string[],
  options?: ParseOptions,
])[] = [
  ['42', 'length', 'ask', ['42 ft', '42 m']],
  ['42', 'depth', 'ask', ['42 ft', '42 in', '42 m', '42 mm']],
  ['1-1/4', 'diameter', 'ask', ['1-1/4 in', '1-1/4 mm']],
  ['900 dp', 'depth', 'ask', ['900 ft', '900 in', '900 m', '900 mm']],
  ['900 dp', 'depth', 'ask', ['900 ft', '900 in', '900 m', '900 mm'], { bare: 'us' }],
  ['Ø32', 'diameter', 'ask', ['32 in', '32 mm'], { bare: 'us' }],
  ['20', 'duration', 'ask', ['20 min', '20 h'], { bare: 'us' }],
  ['100#', 'gaugePressure', 'ask', ['100 psi']],
  ['100#', 'force', 'ask', ['100 lbf']],
  ['100#', 'length', 'wrong-dimension', []],
  ['11/4', 'diameter', 'ask', ['1-1/4', '2.75']],
  ['11/4"', 'diameter', 'ask', ['1-1/4"', '2.75"']],
  ['42-6', 'length', 'ask', ['42 ft 6 in']],
  ['42-6 1/2"', 'length', 'ask', ['42 ft 6 1/2 in']],
  ['4\' 14"', 'depth', 'ask', ['62 in']],
  ['85°', 'temperature', 'ask', ['85 °F', '85 °C']],
  ['1 mpa', 'stress', 'ask', ['1 mPa', '1 MPa']],
  ['3 tons', 'mass', 'ask', ['3 t', '3 short ton']],
  ['1 200 mm', 'length', 'ask', ['1200 mm']],
  ['1,5 m', 'length', 'comma-in-number', ['15 m', '1.5 m']],
  ['1,200 ft', 'altitude', 'comma-in-number', ['1200 ft', '1.200 ft']],
  ['1,200.5 ft', 'altitude', 'comma-in-number', ['1200.5 ft']],
  ['42 fet', 'length', 'unknown-unit', ['42 ft']],
  ['100 pis', 'gaugePressure', 'unknown-unit', ['100 psi']],
  ['100 wibbles', 'gaugePressure', 'unknown-unit', []],
  ['42 psi', 'length', 'wrong-dimension', []],
  ['42 ft', 'gaugePressure', 'wrong-dimension', []],
  ['100 psia', 'gaugePressure', 'wrong-dimension', []],
  ['100 psig', 'absolutePressure', 'wrong-dimension', []],
  ['5 barg', 'stress', 'wrong-dimension', []],
  ['3/0 in', 'diameter', 'not-a-quantity', []],
  ['1 in 0', 'ratio', 'not-a-quantity', []],
  ['0x10 m', 'length', 'not-a-quantity', []],
  ['three feet', 'length', 'not-a-quantity', []],
  ['', 'length', 'not-a-quantity', []],
  ['1e999 m', 'length', 'not-finite', []],
  ['1e308 km', 'length', 'not-finite', []],
  ['NaN', 'length', 'not-finite', []],
  ['-Infinity', 'length', 'not-finite', []],
  [Number.NaN, 'length', 'not-finite', []],
  ['-300 °C', 'temperature', 'out-of-range', []],
  [`${'4'.repeat(63)} ft`, 'length', 'too-long', []],
  [null, 'length', 'wrong-type', []],
  [{ value: 3 }, 'length', 'wrong-type', []],
]

describe('what is refused, and what is asked', () => {
  for (const [text, kind, code, candidates, options] of refused) {
    it(`${String(text)} as ${kind}: ${code}`, () => {
      const found = parseQuantity(text, kind, options)
      if (found.ok) throw new Error(`read as ${found.valueSi}`)
      expect(found.issue.code).toBe(code)
      expect((found.issue.candidates ?? []).map((each) => each.value)).toEqual(candidates)
    })
  }

  it('offers only readings that are read', () => {
    for (const [text, kind, code] of refused) {
      const found = parseQuantity(text, kind)
      const offered = found.ok ? [] : (found.issue.candidates ?? [])
      for (const { value } of offered) {
        const again = parseQuantity(value, kind)
        expect(again.ok || again.issue.code === 'ask', `${code} ${String(text)} → ${value}`).toBe(true)
      }
    }
  })
})
