import { Worker } from 'node:worker_threads'
import type { Outcome } from '../../../shared/core/outcome.ts'
import type { PlanDocument } from '../../plan-document.ts'
import type { Made } from '../../store/noun.ts'
import { type Planner, PlanningError, type PlanTask } from './plan-task.ts'
import { PLANS_HERE, READY } from './plan-worker.ts'

type Options = {
  /** The bundled program: the same file, started as a thread. */
  readonly entry: URL
  readonly threads: number
  /** How long one plan may take, from when a thread begins with it. */
  readonly budgetMs: number
  /** Further plans that may wait for a free thread. */
  readonly mostWaiting: number
}

type Job = {
  readonly task: PlanTask
  readonly signal: AbortSignal
  readonly resolve: (outcome: unknown) => void
  readonly reject: (error: unknown) => void
}

/** One thread and the plan it is at. */
class PlanThread {
  readonly #worker: Worker
  readonly #onIdle: (thread: PlanThread) => void
  readonly #onGone: (thread: PlanThread) => void
  #job: Job | null = null
  #isReady = false
  #stopWatching: () => void = () => undefined

  constructor(entry: URL, onIdle: (thread: PlanThread) => void, onGone: (thread: PlanThread) => void) {
    this.#onIdle = onIdle
    this.#onGone = onGone
    this.#worker = new Worker(entry, { workerData: PLANS_HERE, stdin: false })
    this.#worker.unref()
    this.#worker.on('message', (message: unknown) =>
      message === READY ? this.#ready() : this.#done(message),
    )
    this.#worker.on('error', (error) => this.#end(error))
    this.#worker.on('exit', () => this.#end(new PlanningError('given-up')))
  }

  get isFree(): boolean {
    return this.#isReady && this.#job === null
  }

  begin(job: Job, budgetMs: number): void {
    this.#job = job
    const giveUp = (code: 'too-long' | 'given-up') => () => this.#end(new PlanningError(code))
    const tooLong = setTimeout(giveUp('too-long'), budgetMs)
    const askerLeft = giveUp('given-up')
    job.signal.addEventListener('abort', askerLeft, { once: true })
    this.#stopWatching = () => {
      clearTimeout(tooLong)
      job.signal.removeEventListener('abort', askerLeft)
    }
    this.#worker.postMessage(job.task)
  }

  async stop(): Promise<void> {
    this.#end(new PlanningError('given-up'))
    await this.#worker.terminate()
  }

  #ready(): void {
    this.#isReady = true
    this.#onIdle(this)
  }

  #done(outcome: unknown): void {
    const job = this.#job
    this.#job = null
    this.#stopWatching()
    job?.resolve(outcome)
    this.#onIdle(this)
  }

  /** A thread in the middle of a sum can only be ended whole. */
  #end(error: unknown): void {
    const job = this.#job
    this.#job = null
    this.#isReady = false
    this.#stopWatching()
    this.#onGone(this)
    job?.reject(error)
    void this.#worker.terminate()
  }
}

/** Plans in threads of their own, so that a long one holds nobody up and can be given up. */
export function createWorkerPlanner({ entry, threads, budgetMs, mostWaiting }: Options): Planner {
  const team = new Set<PlanThread>()
  const waiting: Job[] = []

  const handOut = (): void => {
    for (const thread of team) {
      if (!thread.isFree) continue
      let job = waiting.shift()
      while (job?.signal.aborted) {
        job.reject(new PlanningError('given-up'))
        job = waiting.shift()
      }
      if (job === undefined) return
      thread.begin(job, budgetMs)
    }
    const wanted = Math.min(threads, team.size + waiting.length)
    while (team.size < wanted) team.add(new PlanThread(entry, handOut, gone))
  }
  const gone = (thread: PlanThread): void => {
    if (!team.delete(thread)) return
    if (waiting.length > 0) handOut()
  }
  const ask = (task: PlanTask, signal: AbortSignal): Promise<unknown> =>
    new Promise((resolve, reject) => {
      if (waiting.length >= mostWaiting) return reject(new PlanningError('too-busy'))
      waiting.push({ task, signal, resolve, reject })
      handOut()
    })

  return {
    plan: async (given, signal) => (await ask({ kind: 'plan', given }, signal)) as Outcome<PlanDocument>,
    keep: async (given, signal) => (await ask({ kind: 'keep', given }, signal)) as Outcome<Made>,
    async close() {
      for (const job of waiting.splice(0)) job.reject(new PlanningError('given-up'))
      await Promise.all([...team].map((thread) => thread.stop()))
    },
  }
}
