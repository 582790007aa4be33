import type { PullMethod } from './crossing-input.ts'
import { PULL_METHODS } from './crossing-input.ts'
import type { PullPart } from './plan.ts'

/** What decides how the pipe gets in. */
export type PullFacts = {
  readonly asked: PullMethod | null
  readonly lengthM: number
  readonly boreDiameterM: number
  readonly bundleDiameterM: number
  readonly largestPipeM: number
  readonly smallestInsideM: number | null
  readonly pipeCount: number
  readonly isJointed: boolean
  readonly isBendable: boolean
  /** The hole may close or ravel behind the tool in some stretch. */
  readonly holeCloses: boolean
  readonly hoseBoreM: number
  readonly hoseLengthM: number
  readonly isReversible: boolean | null
  readonly isExpanded: boolean
}

/** Push: small tube, ground that stands, to about 50 ft. Common practice. */
const PUSH_MOST_M = 15.24
const PUSH_LARGEST_M = 0.0435
/** A coupling is about one and a half times its hose. Our judgement. */
const COUPLING_OVER_BORE = 1.6
const TOW_LEAST_RATIO = 1.2

/** Why a method is out, as a code; null when it is sane. Order of the tests: what a crew would say first. */
function whyNot(method: PullMethod, facts: PullFacts): string | null {
  const fits = !facts.isExpanded
  switch (method) {
    case 'push':
      if (!fits) return 'needs-larger-bore'
      if (facts.holeCloses) return 'hole-will-not-stand'
      if (facts.pipeCount > 1) return 'bundle'
      if (facts.largestPipeM > PUSH_LARGEST_M) return 'too-stiff-to-push'
      return facts.lengthM > PUSH_MOST_M ? 'too-long-to-push' : null
    case 'cable':
      if (!fits) return 'needs-larger-bore'
      return facts.holeCloses ? 'hole-will-not-stand' : null
    case 'tow':
      if (!fits) return 'needs-larger-bore'
      if (facts.isJointed) return 'jointed-not-towed'
      if (facts.pipeCount > 1) return 'bundle'
      if (facts.smallestInsideM === null) return 'inside-not-known'
      if (facts.smallestInsideM < facts.hoseBoreM * COUPLING_OVER_BORE) return 'hose-will-not-pass'
      if (facts.boreDiameterM / facts.bundleDiameterM < TOW_LEAST_RATIO) return 'exhaust-chokes'
      return facts.hoseLengthM < facts.lengthM ? 'hose-too-short' : null
    case 'reverse':
      if (!fits) return 'needs-larger-bore'
      if (facts.isReversible === null) return 'reverse-not-known'
      if (!facts.isReversible) return 'tool-does-not-reverse'
      return facts.holeCloses ? 'hole-will-not-stand' : null
    case 'expander':
      return fits ? 'not-needed' : facts.holeCloses ? 'hole-will-not-stand' : null
  }
}

/** Order of preference: the everyday way first. */
const PREFERENCE: readonly PullMethod[] = ['cable', 'push', 'tow', 'reverse', 'expander']

/** The method asked for, or the sanest; and why each of the others is out ('sane-too' when it would do as well). */
export function pullPart(facts: PullFacts): PullPart {
  const pushFirst = whyNot('push', facts) === null && facts.isBendable
  const order = pushFirst ? (['push', ...PREFERENCE] as const) : PREFERENCE
  const method = facts.asked ?? order.find((each) => whyNot(each, facts) === null) ?? null
  const others = PULL_METHODS.filter((each) => each !== method).map((each) => ({
    method: each,
    why: whyNot(each, facts) ?? 'sane-too',
  }))
  return { method, others }
}

/** The objection to the method in use, if any: an asked-for method is planned and questioned, not refused. */
export const objection = (facts: PullFacts, method: PullMethod | null): string | null =>
  method === null ? 'no-sane-method' : whyNot(method, facts)
