import type { GeoPosition } from '../kinds.ts'

/** WGS84. */
const EQUATOR_RADIUS_M = 6_378_137
const FLATTENING = 1 / 298.257223563
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING)
const RAD_PER_DEG = Math.PI / 180
/** Each round gains about five digits near the ground. */
const ROUNDS = 8

/** Metres east, north and up of an origin on the site. Up falls by 0.8 mm over 100 m: take heights as entered, not from here. */
export type LocalPoint = { readonly eastM: number; readonly northM: number; readonly upM: number }

export type LocalFrame = {
  readonly toLocal: (position: GeoPosition, heightM?: number) => LocalPoint
  readonly toGeo: (point: { readonly eastM: number; readonly northM: number; readonly upM?: number }) => {
    readonly position: GeoPosition
    readonly heightM: number
  }
}

type Vector = readonly [number, number, number]

/** Earth-centred coordinates of a place at a height above the ellipsoid. */
export function earthCentred(position: GeoPosition, heightM: number): Vector {
  const longitude = position[0] * RAD_PER_DEG
  const latitude = position[1] * RAD_PER_DEG
  const sine = Math.sin(latitude)
  const normalM = EQUATOR_RADIUS_M / Math.sqrt(1 - ECCENTRICITY_SQUARED * sine ** 2)
  const outM = (normalM + heightM) * Math.cos(latitude)
  return [
    outM * Math.cos(longitude),
    outM * Math.sin(longitude),
    (normalM * (1 - ECCENTRICITY_SQUARED) + heightM) * sine,
  ]
}

function fromEarthCentred([x, y, z]: Vector): { readonly position: GeoPosition; readonly heightM: number } {
  const outM = Math.hypot(x, y)
  let latitude = Math.atan2(z, outM * (1 - ECCENTRICITY_SQUARED))
  let normalM = EQUATOR_RADIUS_M
  for (let round = 0; round < ROUNDS; round++) {
    const sine = Math.sin(latitude)
    normalM = EQUATOR_RADIUS_M / Math.sqrt(1 - ECCENTRICITY_SQUARED * sine ** 2)
    latitude = Math.atan2(z + ECCENTRICITY_SQUARED * normalM * sine, outM)
  }
  const sine = Math.sin(latitude)
  // Away from the poles and at them alike: along the normal, both parts of the distance together.
  const heightM = outM * Math.cos(latitude) + z * sine - EQUATOR_RADIUS_M ** 2 / normalM
  return { position: [Math.atan2(y, x) / RAD_PER_DEG, latitude / RAD_PER_DEG], heightM }
}

/**
 * A flat frame touching the ellipsoid (or the site's own height above it) at the origin. Within 100 m of it distances are
 * good to a micrometre; keep the origin on the site. With the height set to the site's, distances are ground distances.
 */
export function localFrame(origin: GeoPosition, originHeightM = 0): LocalFrame {
  const longitude = origin[0] * RAD_PER_DEG
  const latitude = origin[1] * RAD_PER_DEG
  const [sinLon, cosLon] = [Math.sin(longitude), Math.cos(longitude)]
  const [sinLat, cosLat] = [Math.sin(latitude), Math.cos(latitude)]
  const base = earthCentred(origin, originHeightM)
  return {
    toLocal: (position, heightM = originHeightM) => {
      const at = earthCentred(position, heightM)
      const x = at[0] - base[0]
      const y = at[1] - base[1]
      const z = at[2] - base[2]
      return {
        eastM: -sinLon * x + cosLon * y,
        northM: -sinLat * cosLon * x - sinLat * sinLon * y + cosLat * z,
        upM: cosLat * cosLon * x + cosLat * sinLon * y + sinLat * z,
      }
    },
    toGeo: ({ eastM, northM, upM = 0 }) =>
      fromEarthCentred([
        base[0] - sinLon * eastM - sinLat * cosLon * northM + cosLat * cosLon * upM,
        base[1] + cosLon * eastM - sinLat * sinLon * northM + cosLat * sinLon * upM,
        base[2] + cosLat * northM + sinLat * upM,
      ]),
  }
}

type Flat = { readonly eastM: number; readonly northM: number }
export type LineCrossing = {
  /** Along the first line from its start. */
  readonly stationM: number
  /** Along the second line from its start. */
  readonly otherStationM: number
  /** Smaller angle between the two lines: π/2 when they cross square. */
  readonly angleRad: number
}

/** Where two straight lines cross within both their lengths; null when they do not, or run side by side. */
export function lineCrossing(
  first: readonly [start: Flat, end: Flat],
  second: readonly [start: Flat, end: Flat],
): LineCrossing | null {
  const [a, b] = first
  const [c, d] = second
  const along: readonly [number, number] = [b.eastM - a.eastM, b.northM - a.northM]
  const across: readonly [number, number] = [d.eastM - c.eastM, d.northM - c.northM]
  const firstM = Math.hypot(...along)
  const secondM = Math.hypot(...across)
  const turn = along[0] * across[1] - along[1] * across[0]
  const nearlyParallel = 1e-9 * firstM * secondM
  if (firstM === 0 || secondM === 0 || Math.abs(turn) <= nearlyParallel) return null
  const gap: readonly [number, number] = [c.eastM - a.eastM, c.northM - a.northM]
  const onFirst = (gap[0] * across[1] - gap[1] * across[0]) / turn
  const onSecond = (gap[0] * along[1] - gap[1] * along[0]) / turn
  if (onFirst < 0 || onFirst > 1 || onSecond < 0 || onSecond > 1) return null
  return {
    stationM: onFirst * firstM,
    otherStationM: onSecond * secondM,
    angleRad: Math.asin(Math.min(1, Math.abs(turn) / (firstM * secondM))),
  }
}
