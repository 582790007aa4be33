import convert from 'convert'
import { describe, expect, it } from 'vitest'
import type { Kind } from '../../shared/core/kinds.ts'
import { KINDS } from '../../shared/core/kinds.ts'
import { LIKELY_UNITS } from '../../shared/quantities/kind-units.ts'
import { nearestWord } from '../../shared/quantities/nearest-word.ts'
import { matchUnit, unitOfKind } from '../../shared/quantities/unit-spelling.ts'
import { fromSi, toSi, UNITS } from '../../shared/quantities/units.ts'

const kinds = Object.keys(KINDS) as Kind[]

function si(value: number, id: string, kind: Kind): number {
  const unit = unitOfKind(id, kind)
  if (!unit) throw new Error(`${kind} has no ${id}`)
  return toSi(value, unit)
}

const near = (found: number, wanted: number, relative: number): void =>
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted))

describe('against a unit library', () => {
  it('length, area, volume, mass, time, temperature', () => {
    for (const id of ['ft', 'in', 'yd', 'mi', 'mm', 'cm', 'km'] as const)
      near(si(7, id, 'length'), convert(7, id).to('m'), 1e-12)
    for (const id of ['lb', 'oz', 'g'] as const) near(si(7, id, 'mass'), convert(7, id).to('kg'), 1e-12)
    for (const id of ['min', 'h', 'd'] as const) near(si(7, id, 'duration'), convert(7, id).to('s'), 1e-12)
    near(si(7, 'ft2', 'area'), convert(7, 'ft2').to('m2'), 1e-12)
    near(si(7, 'in3', 'volume'), convert(7, 'in3').to('m3'), 1e-12)
    near(si(7, 'L', 'volume'), convert(7, 'L').to('m3'), 1e-12)
    near(si(7, '°F', 'temperature'), convert(7, 'F').to('K'), 1e-12)
    near(si(7, '°C', 'temperature'), convert(7, 'C').to('K'), 1e-12)
  })
})

describe('against NIST SP 811 (2008), appendix B, the digits printed there', () => {
  it.each<[string, Kind, number, number]>([
    ['psi', 'gaugePressure', 6.894757e3, 1e-7],
    ['psf', 'stress', 4.788026e1, 1e-7],
    ['ksi', 'stress', 6.894757e6, 1e-7],
    ['kgf/cm2', 'stress', 9.80665e4, 1e-12],
    ['atm', 'absolutePressure', 1.01325e5, 1e-12],
    ['torr', 'absolutePressure', 1.333224e2, 4e-7],
    ['inHg', 'absolutePressure', 3.386389e3, 2e-7],
    ['mmHg', 'absolutePressure', 1.333224e2, 4e-7],
    ['inH2O', 'pressureDifference', 2.490889e2, 2e-7],
    ['lbf', 'force', 4.448222, 2e-7],
    ['kip', 'force', 4.448222e3, 2e-7],
    ['ft-lb', 'energy', 1.355818, 4e-7],
    ['hp', 'power', 7.456999e2, 1e-7],
    ['cfm', 'volumeFlow', 4.719474e-4, 2e-7],
    ['gpm', 'volumeFlow', 6.30902e-5, 2e-6],
    ['gal', 'volume', 3.785412e-3, 2e-7],
    ['lb/ft3', 'density', 1.601846e1, 4e-7],
    ['mph', 'speed', 4.4704e-1, 1e-12],
    ['ft/min', 'speed', 5.08e-3, 1e-12],
    ['deg', 'angle', 1.745329e-2, 3e-7],
    ['short ton', 'mass', 9.071847e2, 1e-7],
    ['ft3', 'volume', 2.831685e-2, 2e-7],
    ['yd3', 'volume', 7.645549e-1, 1e-7],
  ])('%s', (id, kind, factor, relative) => near(si(1, id, kind), factor, relative))
})

describe('the table itself', () => {
  it('every kind finds its SI unit with a factor of one, and the units offered for it', () => {
    for (const kind of kinds) {
      expect(unitOfKind(KINDS[kind].unit, kind)?.factor ?? unitOfKind('', kind)?.factor, kind).toBe(1)
      for (const id of LIKELY_UNITS[kind]) expect(matchUnit(id, kind).found, `${kind} ${id}`).toBe('one')
    }
  })

  it('there and back is the same number', () => {
    for (const unit of UNITS) near(fromSi(toSi(17.3, unit), unit), 17.3, 1e-12)
  })

  it('sizes of a rule are exact', () => {
    expect(si(0.75, 'in', 'diameter')).toBe(0.01905)
    expect(si(42, 'ft', 'length')).toBe(12.8016)
    expect(si(35, 'mm', 'diameter')).toBe(0.035)
  })
})

describe('nearest word', () => {
  it.each([
    ['bor', 'bore'],
    ['lenght', 'length'],
    ['depht', 'depth'],
    ['x', null],
    ['entirely else', null],
    ['z'.repeat(5000), null],
  ])('%s → %s', (word, near) => expect(nearestWord(word, ['bore', 'length', 'depth'])).toBe(near))
})
