import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { alsoNeeded } from './also-needed.ts'
import { type Path, withValue } from './document-path.ts'
import { waitsForGeodesics } from './geodesics-on-demand.ts'
import type { Json, JsonObject } from './json.ts'

/** `former`: the form cannot be planned as it stands, and the plan is of the last entry that could. */
type Answers =
  | { readonly state: 'current'; readonly plan: Plan; readonly input: CrossingInput }
  | {
      readonly state: 'former'
      readonly plan: Plan
      readonly input: CrossingInput
      readonly issues: readonly Issue[]
    }
  | { readonly state: 'none'; readonly issues: readonly Issue[] }

export type CrossingModel = {
  /** The crossing file, every text as it was typed. */
  readonly document: ReadonlySignal<JsonObject>
  readonly answers: ReadonlySignal<Answers>
  /** What the fields say of it; one nobody has filled in yet is silent, and the answers name it. */
  readonly issues: ReadonlySignal<readonly Issue[]>
  /** Rises when another crossing is opened: fields forget what was half typed. */
  readonly opened: ReadonlySignal<number>
  /** What a choice between two ways of saying something has put aside, so that choosing back loses nothing. */
  readonly setAside: Map<Path, Json>
  /** What stands in a field and could not be read, so that the crossing still has what stood there before; null: it could. */
  markUnread(path: Path, issue: Issue | null): void
  set(path: Path, value: Json | undefined): void
  /** Several values in one step. */
  setAll(changes: readonly (readonly [Path, Json | undefined])[]): void
  open(document: JsonObject): void
}

type Options = {
  /** Runs the last change of a burst; a frame of the screen unless told otherwise. */
  readonly soon?: (run: () => void) => void
}

/** What stands below a place that changes is new there. */
function withEmptied(
  emptied: ReadonlySet<Path>,
  [path, value]: readonly [Path, Json | undefined],
): ReadonlySet<Path> {
  const others = [...emptied].filter((each) => each !== path && !each.startsWith(`${path}.`))
  return new Set(value === undefined ? [...others, path] : others)
}

/** A field nobody has filled in yet is not a mistake: the answers say what is still needed. */
function saidByFields(answers: Answers, emptied: ReadonlySet<Path>): readonly Issue[] {
  if (answers.state === 'current') return []
  const { state, issues } = answers
  return issues.filter(({ code, path }) => code !== 'required' || (state !== 'none' && emptied.has(path)))
}

/** The very same map when nothing changes: then nothing is worked out again. */
function withUnread(
  unread: ReadonlyMap<Path, Issue>,
  path: Path,
  issue: Issue | null,
): ReadonlyMap<Path, Issue> {
  if (issue === null && !unread.has(path)) return unread
  const others = [...unread].filter(([each]) => each !== path)
  return new Map(issue === null ? others : [...others, [path, issue]])
}

export function createCrossingModel(initial: JsonObject, options: Options = {}): CrossingModel {
  const soon = options.soon ?? ((run) => requestAnimationFrame(run))
  const document = signal(initial)
  const settled: Signal<JsonObject> = signal(initial)
  const opened = signal(0)
  const setAside = new Map<Path, Json>()
  /** Places that were filled in and emptied again. */
  const emptied: Signal<ReadonlySet<Path>> = signal(new Set())
  const unread: Signal<ReadonlyMap<Path, Issue>> = signal(new Map())
  let waiting = false
  // Kept outside the signals: it follows from their history, not from their present values.
  let lastGood: { readonly plan: Plan; readonly input: CrossingInput } | null = null

  const settleSoon = () => {
    if (waiting) return
    waiting = true
    soon(() => {
      waiting = false
      settled.value = document.value
    })
  }

  const setAll = (changes: readonly (readonly [Path, Json | undefined])[]) => {
    emptied.value = changes.reduce(withEmptied, emptied.value)
    document.value = changes.reduce((at, [path, value]) => withValue(at, path, value), document.value)
    settleSoon()
  }

  const answers = computed((): Answers => {
    const parsed = parseCrossing(settled.value)
    if (parsed.ok && waitsForGeodesics(parsed.value)) {
      return lastGood === null ? { state: 'none', issues: [] } : { state: 'former', ...lastGood, issues: [] }
    }
    const outcome = parsed.ok ? planCrossing(parsed.value) : parsed
    if (parsed.ok && outcome.ok) {
      lastGood = { plan: outcome.value, input: parsed.value }
      if (unread.value.size === 0) return { state: 'current', ...lastGood }
    }
    const issues = [...unread.value.values(), ...(outcome.ok ? [] : outcome.issues)]
    if (lastGood !== null) return { state: 'former', ...lastGood, issues }
    return { state: 'none', issues: parsed.ok ? issues : [...issues, ...alsoNeeded(settled.value, issues)] }
  })

  return {
    document,
    answers,
    issues: computed(() => saidByFields(answers.value, emptied.value)),
    opened,
    setAside,
    markUnread(path, issue) {
      unread.value = withUnread(unread.peek(), path, issue)
    },
    set: (path, value) => setAll([[path, value]]),
    setAll,
    open(next) {
      lastGood = null
      setAside.clear()
      // In one step: nobody is to see answers of the former crossing among what is the next one's already.
      batch(() => {
        emptied.value = new Set()
        unread.value = new Map()
        opened.value += 1
        document.value = next
        settled.value = next
      })
    },
  }
}
