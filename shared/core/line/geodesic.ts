import { Geodesic } from 'geographiclib-geodesic'
import type { GeoPosition } from '../kinds.ts'
import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { learnGeodesic } from './known-geodesic.ts'

const RAD_PER_DEG = Math.PI / 180
const FULL_TURN_DEG = 360

const finite = (value: number | undefined, what: string): number => {
  if (value === undefined || !Number.isFinite(value)) throw new PreconditionError(`geodesic without ${what}`)
  return value
}

/** From 0 up to a full turn, clockwise from true north. */
const bearingRad = (azimuthDeg: number): number =>
  ((azimuthDeg + FULL_TURN_DEG) % FULL_TURN_DEG) * RAD_PER_DEG

/** The shortest line between two places on the WGS84 ellipsoid: its length and the bearings along it at both ends. */
export function geodesicBetween(
  from: GeoPosition,
  to: GeoPosition,
): { readonly lengthM: number; readonly startBearingRad: number; readonly endBearingRad: number } {
  const line = Geodesic.WGS84.Inverse(from[1], from[0], to[1], to[0])
  return {
    lengthM: finite(line.s12, 'length'),
    startBearingRad: bearingRad(finite(line.azi1, 'azimuth')),
    endBearingRad: bearingRad(finite(line.azi2, 'azimuth')),
  }
}

/** The place reached from another along a bearing, on the WGS84 ellipsoid. */
export function geodesicTo(from: GeoPosition, startBearingRad: number, lengthM: number): GeoPosition {
  const line = Geodesic.WGS84.Direct(from[1], from[0], startBearingRad / RAD_PER_DEG, lengthM)
  return [finite(line.lon2, 'longitude'), finite(line.lat2, 'latitude')]
}

/** Length and bearing of the line from launch to reception. Exact to a few nanometres; ground at 1,600 m is 25 mm per 100 m longer. */
export const geodesicLength = relation({
  id: 'geodesic-length',
  title: 'Length between two places',
  formula: 'geodesic on WGS84 (a = 6 378 137 m, 1/f = 298.257223563), Karney 2013',
  sources: ['KarneyGeodesic'],
  inputs: {
    launch: { position: true, words: 'launch, longitude and latitude in degrees (WGS84)' },
    reception: { position: true, words: 'reception, longitude and latitude in degrees (WGS84)' },
  },
  outputs: {
    length: { kind: 'length', words: 'length along the ellipsoid' },
    azimuth: { kind: 'angle', words: 'bearing at launch, clockwise from true north' },
  },
  fn: ({ launch, reception }) => {
    const line = geodesicBetween(launch, reception)
    return { lengthM: line.lengthM, azimuthRad: line.startBearingRad }
  },
  checks: ['geodesic'],
  remarks: 'At the height of the ellipsoid: ground 100 m up is 1.6 mm per 100 m longer.',
})

learnGeodesic(geodesicLength)
