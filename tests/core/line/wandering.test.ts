import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { contactChance } from '../../../shared/core/line/contact-chance.ts'
import { deviation } from '../../../shared/core/line/deviation.ts'
import { geodesicBetween, geodesicTo } from '../../../shared/core/line/geodesic.ts'
import { hitChance } from '../../../shared/core/line/hit-chance.ts'
import { observedDeviation } from '../../../shared/core/line/observed-deviation.ts'
import {
  AIM_DEFAULT_RAD,
  DRIFT_DEFAULT_RAD_PER_SQRT_M,
  pathCovarianceM2,
} from '../../../shared/core/line/path-covariance.ts'

const wander = { aimRad: AIM_DEFAULT_RAD, driftRadPerSqrtM: DRIFT_DEFAULT_RAD_PER_SQRT_M }
const metres = fc.double({ min: 0, max: 60, noNaN: true })
const sigmas = fc.double({ min: 0.001, max: 1, noNaN: true })

describe('the wandering path', () => {
  it('has the covariance and correlation worked by hand for 5 m and 15 m', () => {
    const shared = pathCovarianceM2(wander, 5, 15)
    expect(shared).toBeCloseTo(0.005637, 6)
    const spread = Math.sqrt(pathCovarianceM2(wander, 5, 5) * pathCovarianceM2(wander, 15, 15))
    expect(shared / spread).toBeCloseTo(0.7945, 4)
  })

  it('grows with the station and with either cause', () => {
    fc.assert(
      fc.property(metres, metres, (a, b) => {
        const near = deviation.fn({ stationM: Math.min(a, b), ...wander }).sigmaM
        const far = deviation.fn({ stationM: Math.max(a, b), ...wander }).sigmaM
        expect(far).toBeGreaterThanOrEqual(near)
        const worse = { aimRad: wander.aimRad * 1.5, driftRadPerSqrtM: wander.driftRadPerSqrtM * 1.5 }
        expect(deviation.fn({ stationM: a, ...worse }).sigmaM).toBeCloseTo(
          1.5 * deviation.fn({ stationM: a, ...wander }).sigmaM,
          12,
        )
      }),
    )
  })

  it('is never made worse by a sighting, and a better sighting helps more', () => {
    fc.assert(
      fc.property(
        metres,
        metres,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (stationM, sightingM, error) => {
          const before = deviation.fn({ stationM, ...wander }).sigmaM
          const rough = observedDeviation.fn({ stationM, sightingM, sightingErrorM: error, ...wander }).sigmaM
          const fine = observedDeviation.fn({
            stationM,
            sightingM,
            sightingErrorM: error / 2,
            ...wander,
          }).sigmaM
          expect(rough).toBeLessThanOrEqual(before * (1 + 1e-12))
          expect(fine).toBeLessThanOrEqual(rough + 1e-9)
        },
      ),
    )
    expect(observedDeviation.fn({ stationM: 8, sightingM: 8, sightingErrorM: 0, ...wander }).sigmaM).toBe(0)
    expect(
      observedDeviation.fn({ stationM: 8, sightingM: 0, sightingErrorM: 0, ...wander }).sigmaM,
    ).toBeGreaterThan(0)
  })
})

describe('chances', () => {
  it('lie between 0 and 1, are symmetric, and fall with distance', () => {
    fc.assert(
      fc.property(
        metres,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        sigmas,
        (separationM, reachM, sigmaM) => {
          const chance = contactChance.fn({ separationM, reachM, sigmaM }).probability
          expect(chance).toBeGreaterThanOrEqual(0)
          expect(chance).toBeLessThanOrEqual(1)
          expect(contactChance.fn({ separationM: -separationM, reachM, sigmaM }).probability).toBe(chance)
          expect(
            contactChance.fn({ separationM: separationM + 0.1, reachM, sigmaM }).probability,
            // Two tails are subtracted: below a few times the last bit of 1 the order is rounding.
          ).toBeLessThanOrEqual(chance + 1e-15)
          const hit = hitChance.fn({ halfWindowM: reachM, sigmaM }).probability
          expect(hit).toBeGreaterThanOrEqual(0)
          expect(hit).toBeLessThanOrEqual(1)
        },
      ),
    )
  })

  it('become certainties when nothing is in doubt', () => {
    expect(contactChance.fn({ separationM: 0.2, reachM: 0.1, sigmaM: 0 }).probability).toBe(0)
    expect(contactChance.fn({ separationM: 0.05, reachM: 0.1, sigmaM: 0 }).probability).toBe(1)
    expect(hitChance.fn({ halfWindowM: 0.1, sigmaM: 0 }).probability).toBe(1)
  })
})

describe('the geodesic', () => {
  it('comes back to where it was sent', () => {
    const place = fc.tuple(
      fc.double({ min: -179, max: 179, noNaN: true }),
      fc.double({ min: -85, max: 85, noNaN: true }),
    )
    fc.assert(
      fc.property(
        place,
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (from, bearing, lengthM) => {
          const line = geodesicBetween(from, geodesicTo(from, bearing, lengthM))
          expect(line.lengthM).toBeCloseTo(lengthM, 6)
          expect(Math.cos(line.startBearingRad - bearing)).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  it('reaches the place printed in the documentation of the library', () => {
    const [longitude, latitude] = geodesicTo([115.74, -32.06], (225 * Math.PI) / 180, 20_000_000)
    expect(longitude).toBeCloseTo(-63.95925278, 8)
    expect(latitude).toBeCloseTo(32.11195529, 8)
  })
})
