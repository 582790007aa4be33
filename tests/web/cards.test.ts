import { describe, expect, test } from 'vitest'
import { noseByMark, noseOf } from '../../web/cards/nose.ts'
import { emergencyOf } from '../../web/cards/numbers-to-call.ts'
import { planOfDemo } from '../support/crossings.ts'

describe('where the nose is', () => {
  const plan = planOfDemo('firm-clay-service')

  test('at its station, with the depth of the line there and what is left', () => {
    const nose = noseOf(plan, 6.4)
    if (nose.state !== 'found') throw new Error('beyond')
    expect(nose.stationM).toBe(6.4)
    expect(nose.leftM).toBeCloseTo(plan.bore.lengthM - 6.4, 9)
    const { depthFromM, depthToM } = plan.shots[0] ?? { depthFromM: 0, depthToM: 0 }
    expect(nose.depthM).toBeCloseTo((depthFromM + depthToM) / 2, 1)
  })

  test('doubt grows with what was bored, and beyond the bore there is none to give', () => {
    const reach = (stationM: number) => {
      const nose = noseOf(plan, stationM)
      return nose.state === 'found' ? nose.reachM : Number.NaN
    }
    expect(reach(10)).toBeGreaterThan(reach(5))
    expect(reach(5)).toBeGreaterThan(0)
    expect(noseOf(plan, plan.bore.lengthM + 0.5).state).toBe('beyond')
  })

  test('without a plan: the mark, and the usual drift', () => {
    const nose = noseByMark(6)
    expect(nose).toMatchObject({ state: 'found', stationM: 6, leftM: null, depthM: null })
    // σ = √((4.167 mrad·6 m)² + (5.1 mrad/√m)²·6³/3) = 50.0 mm; 1.645 σ worked by hand.
    expect(nose.state === 'found' && nose.reachM).toBeCloseTo(0.0825, 3)
  })
})

describe('whom to call', () => {
  test('is read even off a crossing that cannot be planned, owners with their numbers after our own', () => {
    const said = emergencyOf({
      name: 'Elm 4',
      emergency: { meeting: 'church gate', numbers: [{ who: 'Office', phone: '555 0100' }, {}] },
      locate: {
        jurisdiction: 'uk',
        ticket: { site: '4 Elm Road' },
        responses: [{ owner: 'Town Gas', phone: '555 0142' }, { owner: 'Silent' }, 'junk'],
      },
    })
    expect(said).toMatchObject({
      name: 'Elm 4',
      address: '4 Elm Road',
      meeting: 'church gate',
      number: '999',
    })
    expect(said.numbers.map((each) => each.who)).toEqual(['Office', 'Town Gas'])
  })

  test('an empty crossing says nothing, and breaks nothing', () => {
    expect(emergencyOf({})).toMatchObject({ name: '', address: '', number: '911', numbers: [] })
  })
})
