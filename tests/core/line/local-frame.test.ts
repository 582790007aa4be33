import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { geodesicBetween, geodesicTo } from '../../../shared/core/line/geodesic.ts'
import { earthCentred, lineCrossing, localFrame } from '../../../shared/core/line/local-frame.ts'

const places = fc.tuple(
  fc.double({ min: -179.9, max: 179.9, noNaN: true }),
  fc.double({ min: -80, max: 80, noNaN: true }),
)
const near = fc.double({ min: -100, max: 100, noNaN: true })
const turns = fc.double({ min: 0, max: 6.28, noNaN: true })

describe('the local frame', () => {
  it('has the printed earth-centred place of Flinders Peak', () => {
    // GDA technical manual, GRS80, height 350.948 m; WGS84 differs by less than a tenth of a millimetre.
    const longitude = 144 + 25 / 60 + 29.52442 / 3600
    const latitude = -(37 + 57 / 60 + 3.7203 / 3600)
    const [x, y, z] = earthCentred([longitude, latitude], 350.948)
    expect(Math.abs(x - -4_096_088.424)).toBeLessThan(0.001)
    expect(Math.abs(y - 2_929_823.084)).toBeLessThan(0.001)
    expect(Math.abs(z - -3_901_375.454)).toBeLessThan(0.001)
  })

  it('goes there and back', () => {
    fc.assert(
      fc.property(
        places,
        near,
        near,
        fc.double({ min: -50, max: 3000, noNaN: true }),
        (origin, eastM, northM, height) => {
          const frame = localFrame(origin, height)
          const back = frame.toGeo({ eastM, northM, upM: 1.5 })
          const again = frame.toLocal(back.position, back.heightM)
          expect(again.eastM).toBeCloseTo(eastM, 6)
          expect(again.northM).toBeCloseTo(northM, 6)
          expect(again.upM).toBeCloseTo(1.5, 6)
        },
      ),
    )
  })

  it('measures what the geodesic measures, within a micrometre over 100 m', () => {
    fc.assert(
      fc.property(places, turns, fc.double({ min: 1, max: 100, noNaN: true }), (origin, bearing, lengthM) => {
        const frame = localFrame(origin)
        const end = frame.toLocal(geodesicTo(origin, bearing, lengthM))
        expect(Math.abs(Math.hypot(end.eastM, end.northM) - lengthM)).toBeLessThan(1e-6)
        expect(end.eastM / lengthM).toBeCloseTo(Math.sin(bearing), 5)
        expect(end.northM / lengthM).toBeCloseTo(Math.cos(bearing), 5)
        expect(end.upM).toBeLessThanOrEqual(1e-6)
        expect(end.upM).toBeGreaterThan(-0.0008)
      }),
    )
  })

  it('has ground distances at the height of the site: 25 mm more per 100 m at 1,600 m', () => {
    const origin = [-105, 39.7] as const
    const end = geodesicTo(origin, 1, 100)
    const up = localFrame(origin, 1600).toLocal(end)
    expect(Math.hypot(up.eastM, up.northM) - 100).toBeCloseTo(0.025, 3)
  })
})

describe('where two lines cross', () => {
  it('is where the geodesics through the same ends cross', () => {
    fc.assert(
      fc.property(places, turns, fc.double({ min: 0.2, max: 2.9, noNaN: true }), (origin, bearing, turn) => {
        const ends = [bearing, bearing + Math.PI, bearing + turn, bearing + turn + Math.PI]
          .map((each, index) => geodesicTo(origin, each, 20 + 10 * index))
          .map((place) => localFrame(origin).toLocal(place))
        const [a, b, c, d] = ends
        if (!a || !b || !c || !d) throw new Error('four ends')
        const crossing = lineCrossing([a, b], [c, d])
        expect(crossing?.stationM).toBeCloseTo(20, 4)
        expect(crossing?.otherStationM).toBeCloseTo(40, 4)
        expect(crossing?.angleRad).toBeCloseTo(Math.min(turn, Math.PI - turn), 4)
      }),
    )
  })

  it('is nowhere for lines that run side by side, stop short or have no length', () => {
    const at = (eastM: number, northM: number) => ({ eastM, northM })
    expect(lineCrossing([at(0, 0), at(10, 0)], [at(0, 1), at(10, 1)])).toBeNull()
    expect(lineCrossing([at(0, 0), at(10, 0)], [at(12, -1), at(12, 1)])).toBeNull()
    expect(lineCrossing([at(0, 0), at(10, 0)], [at(5, 1), at(5, 3)])).toBeNull()
    expect(lineCrossing([at(0, 0), at(0, 0)], [at(-1, 0), at(1, 0)])).toBeNull()
    expect(lineCrossing([at(0, 0), at(10, 0)], [at(4, -3), at(4, 3)])).toEqual({
      stationM: 4,
      otherStationM: 3,
      angleRad: Math.PI / 2,
    })
  })

  it('is measured the same way round the antimeridian', () => {
    const frame = localFrame([179.9999, 10])
    const over = frame.toLocal([-179.9999, 10])
    expect(Math.hypot(over.eastM, over.northM)).toBeCloseTo(
      geodesicBetween([179.9999, 10], [-179.9999, 10]).lengthM,
      6,
    )
  })
})
