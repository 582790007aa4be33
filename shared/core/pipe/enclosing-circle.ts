import { PreconditionError } from '../outcome.ts'
import { bundleDiameter } from './bundle-diameter.ts'

export type Circle = { readonly x: number; readonly y: number; readonly radius: number }

/** Few pipes are searched through; for more the search is cut off early and only gives a larger, still safe, ring. */
const FEW = 5
const MOST_SEARCHED = 12
const PLACES_TRIED = { few: 4000, many: 80 } as const
const HALVINGS = 26
/** Share of the ring's radius two pipes may seem to overlap through rounding. */
const SLACK = 1e-9

type Ring = { readonly radius: number }

/** Centres at distances a and b from two points: none, or one on either side. */
function meets(
  one: Circle,
  two: Circle,
  fromOne: number,
  fromTwo: number,
): readonly { readonly x: number; readonly y: number }[] {
  const dx = two.x - one.x
  const dy = two.y - one.y
  const apart = Math.hypot(dx, dy)
  if (apart === 0) return []
  const along = (fromOne ** 2 - fromTwo ** 2 + apart ** 2) / (2 * apart)
  const square = fromOne ** 2 - along ** 2
  if (square < -SLACK * fromOne ** 2) return []
  const across = Math.sqrt(Math.max(0, square))
  const x = one.x + (along * dx) / apart
  const y = one.y + (along * dy) / apart
  return [
    { x: x - (across * dy) / apart, y: y + (across * dx) / apart },
    { x: x + (across * dy) / apart, y: y - (across * dx) / apart },
  ]
}

const fits = (ring: Ring, placed: readonly Circle[], next: Circle): boolean =>
  Math.hypot(next.x, next.y) + next.radius <= ring.radius * (1 + SLACK) &&
  placed.every(
    (each) => Math.hypot(each.x - next.x, each.y - next.y) >= each.radius + next.radius - SLACK * ring.radius,
  )

/** Places that touch two things: the ring and a pipe already lying there, or two such pipes. */
function corners(ring: Ring, placed: readonly Circle[], radius: number): readonly Circle[] {
  const centre: Circle = { x: 0, y: 0, radius: 0 }
  const found: Circle[] = []
  placed.forEach((one, index) => {
    for (const at of meets(centre, one, ring.radius - radius, one.radius + radius))
      found.push({ ...at, radius })
    for (const two of placed.slice(index + 1)) {
      for (const at of meets(one, two, one.radius + radius, two.radius + radius))
        found.push({ ...at, radius })
    }
  })
  return found
}

type Budget = { left: number }

/** Lays the pipes in the ring one after the other, each in a corner; an arrangement, or null when none was found. */
function lay(
  ring: Ring,
  placed: readonly Circle[],
  radii: readonly number[],
  budget: Budget,
): readonly Circle[] | null {
  const [radius, ...others] = radii
  if (radius === undefined) return placed
  const places =
    placed.length === 0 ? [{ x: ring.radius - radius, y: 0, radius }] : corners(ring, placed, radius)
  for (const next of places) {
    if (budget.left <= 0) return null
    if (!fits(ring, placed, next)) continue
    budget.left -= 1
    const laid = lay(ring, [...placed, next], others, budget)
    if (laid) return laid
  }
  return null
}

/** Diameter of a ring that surely takes n pipes as large as the largest. */
function ringOfEqual(largestRadiusM: number, count: number): number {
  if (count <= bundleDiameter.inputs.count.range.hardMax) {
    return bundleDiameter.fn({ outsideDiameterM: 2 * largestRadiusM, count }).diameterM
  }
  // Some shift of a hexagonal heap has n centres within √(2√3·n/π) radii: its mean over all shifts is n.
  return 2 * largestRadiusM * (1 + Math.sqrt((2 * Math.sqrt(3) * count) / Math.PI))
}

export type Bundle = {
  readonly diameterM: number
  /** Where the pipes lie in it, centre of the bundle at 0, 0; null when only a bound was taken. */
  readonly pipes: readonly Circle[] | null
}

/**
 * A circle that takes the given pipes, not all alike, lying together. It is the smallest ring found in which they could be
 * laid, each in a corner: an arrangement that exists, so never too small; exact for two or three, close for five, looser
 * beyond. Never more than the ring of as many pipes of the largest size, nor than all of them in a row.
 */
export function bundleOfUnequal(outsideDiametersM: readonly number[]): Bundle {
  const radii = outsideDiametersM.map((diameter) => diameter / 2).sort((a, b) => b - a)
  const [largest] = radii
  if (largest === undefined || !radii.every((radius) => radius > 0 && Number.isFinite(radius))) {
    throw new PreconditionError(`no bundle of diameters ${outsideDiametersM.join(', ')}`)
  }
  const sumM = radii.reduce((total, radius) => total + 2 * radius, 0)
  const boundM = Math.min(sumM, ringOfEqual(largest, radii.length))
  if (radii.length === 1) return { diameterM: boundM, pipes: [{ x: 0, y: 0, radius: largest }] }
  if (radii.length > MOST_SEARCHED) return { diameterM: boundM, pipes: null }
  const tries = radii.length <= FEW ? PLACES_TRIED.few : PLACES_TRIED.many
  let low = largest
  let high = boundM / 2
  let best: readonly Circle[] | null = lay({ radius: high }, [], radii, { left: tries })
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2
    const laid = lay({ radius: middle }, [], radii, { left: tries })
    if (laid) {
      best = laid
      high = middle
    } else low = middle
  }
  return { diameterM: 2 * high, pipes: best }
}

/** Diameter of a circle that surely takes all the pipes: see `bundleOfUnequal`. */
export const enclosingDiameterM = (outsideDiametersM: readonly number[]): number =>
  bundleOfUnequal(outsideDiametersM).diameterM
