import type { PublishedCheck } from './shape.ts'

const FLOAT = 'printed to more digits than double precision carries; the test set itself allows this'
const KARNEY = { source: 'KarneyGeodesic', standing: 'published' } as const

/** Degrees, minutes and seconds to decimal degrees, as the positions of this program are typed. */
const degrees = (deg: number, min: number, sec: number): number => deg + min / 60 + sec / 3600

const FLINDERS_PEAK = `${degrees(144, 25, 29.5244)},${-degrees(37, 57, 3.7203)}`
const BUNINYONG = `${degrees(143, 55, 35.3839)},${-degrees(37, 39, 10.1561)}`

/** An azimuth printed to a hundredth of a second of arc. */
const azimuth = (deg: number, min: number, sec: number) => ({
  printed: degrees(deg, min, sec).toFixed(7),
  unit: 'deg',
  tolerance: { absolute: 0.005 / 3600 + 5e-8 },
  why: 'printed in degrees, minutes and hundredths of a second',
})

/** First cases of the test set GeodTest: longitude and latitude of both ends, azimuth at the first, length. */
const GEODTEST = [
  ['-139.44815,35.60777', '-69.95921,-11.17491', '111.098748429560326', '8935244.5604818305'],
  ['106.05087,55.52454', '-162.81766,77.03196', '22.020059880982801', '4105086.1713924406'],
  ['142.59065,-21.97856', '98.56635,41.84138', '327.55543123566811', '8394328.894657671'],
  ['112.2363,-66.99028', '-74.09656,-12.70631', '173.73491240878403', '11150344.2312080241'],
] as const

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'geodesic-length',
    name: 'Flinders Peak to Buninyong',
    given: { launch: FLINDERS_PEAK, reception: BUNINYONG },
    expected: { lengthM: { printed: '54972.271', unit: 'm' }, azimuthRad: azimuth(306, 52, 5.37) },
    source: 'Gda94Manual',
    standing: 'published',
  },
  {
    relation: 'geodesic-length',
    name: 'Buninyong to Flinders Peak',
    given: { launch: BUNINYONG, reception: FLINDERS_PEAK },
    expected: { lengthM: { printed: '54972.271', unit: 'm' }, azimuthRad: azimuth(127, 10, 25.07) },
    source: 'Gda94Manual',
    standing: 'published',
  },
  {
    relation: 'geodesic-length',
    name: 'Wellington to Salamanca',
    given: { launch: '174.81,-41.32', reception: '-5.5,40.96' },
    expected: { lengthM: { printed: '19959679.267', unit: 'm' } },
    ...KARNEY,
  },
  {
    relation: 'geodesic-length',
    name: 'the length of Great Britain',
    given: { launch: '-5.71475,50.06632', reception: '-3.07009,58.64402' },
    expected: {
      lengthM: { printed: '969954.166314', unit: 'm' },
      azimuthRad: { printed: '9.141877', unit: 'deg' },
    },
    ...KARNEY,
  },
  ...GEODTEST.map(
    ([launch, reception, azimuthDeg, lengthM], index): PublishedCheck => ({
      relation: 'geodesic-length',
      name: `GeodTest ${index + 1}`,
      given: { launch, reception },
      expected: {
        lengthM: { printed: lengthM, unit: 'm', tolerance: { absolute: 1e-7 }, why: FLOAT },
        azimuthRad: { printed: azimuthDeg, unit: 'deg', tolerance: { absolute: 1e-12 }, why: FLOAT },
      },
      ...KARNEY,
    }),
  ),
]
