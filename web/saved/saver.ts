import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals'
import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { sameJson } from '../../shared/contracts/merge-documents.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { JsonObject } from '../state/json.ts'
import type { AnsweredIssue, Change, Sent } from './crossing-requests.ts'
import type { SentOrWaiting } from './send-or-queue.ts'

/** What the crossing in hand was made from; `document` null when it is not known any more. */
export type Base = { readonly version: number; readonly document: JsonObject | null }

export type SaveState =
  /** Never saved (`from` null), or changed since version `from`. */
  | { readonly state: 'unsaved'; readonly from: number | null }
  | { readonly state: 'saving' }
  | { readonly state: 'saved'; readonly version: number }
  /** Goes when the server can be reached. `isKept` false: lost when this page is closed before. */
  | { readonly state: 'waiting'; readonly isKept: boolean }
  | { readonly state: 'refused'; readonly issues: readonly AnsweredIssue[] }
  /** The server answers, but could not keep it. */
  | { readonly state: 'trouble' }
  | { readonly state: 'elsewhere'; readonly theirs: KeptCrossing }
  /** Taken away elsewhere so long ago that nothing of it is left. */
  | { readonly state: 'gone' }

export type Saver = {
  readonly id: string
  readonly base: ReadonlySignal<Base | null>
  /** As the server has it, with the result as made; null while this page has not seen it. */
  readonly kept: ReadonlySignal<KeptCrossing | null>
  readonly state: ReadonlySignal<SaveState>
  save(): Promise<void>
  /** What was made of both versions: saved on top of theirs. */
  saveOnTop(document: JsonObject, theirs: KeptCrossing): Promise<void>
  /** Takes what the server has, and lets go of what was typed since. */
  takeKept(kept: KeptCrossing): void
  stop(): void
}

/** Passing stages of a save; 'at-rest' is read from what is typed and what is kept. */
type Stage = { readonly state: 'at-rest' } | Exclude<SaveState, { readonly state: 'unsaved' | 'saved' }>
const AT_REST: Stage = { state: 'at-rest' }

export type SaverDoors = {
  /** `isBehindOthers`: an earlier change of this crossing still waits, and must arrive first. */
  readonly send: (change: Change, isBehindOthers: boolean) => Promise<SentOrWaiting>
  /** Sends what waits; whether changes of this crossing are left. */
  readonly flush: (id: string) => Promise<boolean>
  readonly whenSent: (requestKey: string, listener: (sent: Sent) => void) => () => void
  readonly newKey: () => string
  /** Drops a change from the queue: a person decides about it now. */
  readonly drop: (requestKey: string) => void
}

export type SaverStart = {
  readonly id: string
  readonly base: Base | null
  readonly kept: KeptCrossing | null
  /** A change of this crossing that was saved before the page was loaded again, and waits. */
  readonly waitingKey: string | null
}

const baseOf = ({ version, document }: KeptCrossing): Base => ({ version, document })

/** How far a save has come, and what the server answered last. */
function createProgress(start: SaverStart, doors: Pick<SaverDoors, 'whenSent' | 'drop'>) {
  const base = signal(start.base)
  const kept = signal(start.kept)
  // What was typed was made from another version than the server now has.
  const isBehind = start.kept !== null && start.base?.version !== start.kept.version
  const stage = signal<Stage>(
    isBehind && start.kept !== null ? { state: 'elsewhere', theirs: start.kept } : AT_REST,
  )
  let stopListening = () => {}

  const takeDone = (found: KeptCrossing) =>
    batch(() => {
      kept.value = found
      base.value = baseOf(found)
      stage.value = AT_REST
    })

  const takeAnswer = (sent: SentOrWaiting | Sent, requestKey: string) => {
    switch (sent.state) {
      case 'done':
        takeDone(sent.kept)
        return
      case 'conflict':
        doors.drop(requestKey)
        stage.value = { state: 'elsewhere', theirs: sent.current }
        return
      case 'absent':
        doors.drop(requestKey)
        stage.value = { state: 'gone' }
        return
      case 'refused':
        doors.drop(requestKey)
        stage.value = sent
        return
      case 'waiting':
        stage.value = sent
        stopListening = doors.whenSent(requestKey, (answer) => takeAnswer(answer, requestKey))
        return
      case 'trouble':
      case 'unreachable':
        stage.value = { state: 'trouble' }
    }
  }

  if (start.waitingKey !== null && !isBehind) takeAnswer({ state: 'waiting', isKept: true }, start.waitingKey)
  return { base, kept, stage, takeDone, takeAnswer, stopListening: () => stopListening() }
}

/** Saves the crossing of a model under its id, always from the version last seen. */
export function createSaver(model: CrossingModel, start: SaverStart, doors: SaverDoors): Saver {
  const { id } = start
  const { base, kept, stage, takeDone, takeAnswer, stopListening } = createProgress(start, doors)

  const save = async () => {
    if (stage.peek().state === 'saving') return
    stage.value = { state: 'saving' }
    // As it stands now: what is typed while it travels is not part of this save.
    const document = model.document.value
    const isBehindOthers = await doors.flush(id)
    const { state } = stage.peek()
    // What was saved before has met something: a person decides about that first.
    if (state !== 'saving' && state !== 'at-rest') return
    stopListening()
    stage.value = { state: 'saving' }
    const requestKey = doors.newKey()
    const from = base.value?.version ?? null
    const change = { id, document, from, requestKey }
    try {
      takeAnswer(await doors.send(change, isBehindOthers), requestKey)
    } catch (error) {
      // A mistake of ours: said to be no save, so that it can be tried again.
      stage.value = { state: 'trouble' }
      throw error
    }
  }

  // What was refused has been changed: whether it will do now is not known before it is sent again.
  const stopWatching = effect(() => {
    if (model.document.value && stage.peek().state === 'refused') stage.value = AT_REST
  })

  return {
    id,
    base,
    kept,
    state: computed((): SaveState => {
      if (stage.value.state !== 'at-rest') return stage.value
      const from = base.value
      const isSaved = from?.document != null && sameJson(from.document, model.document.value)
      if (from !== null && isSaved) return { state: 'saved', version: from.version }
      return { state: 'unsaved', from: from?.version ?? null }
    }),
    save,
    async saveOnTop(document, theirs) {
      batch(() => {
        base.value = baseOf(theirs)
        stage.value = AT_REST
        model.open(document)
      })
      await save()
    },
    takeKept(found) {
      batch(() => {
        takeDone(found)
        model.open(found.document)
      })
    },
    stop() {
      stopListening()
      stopWatching()
    },
  }
}
