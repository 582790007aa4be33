import { type MessagePort, parentPort, workerData } from 'node:worker_threads'
import { answerTask, type PlanTask } from './plan-task.ts'

/** What a thread is started with to be one that plans. */
export const PLANS_HERE = 'underlane-plans'

/** What the thread says once its program is loaded and it can be given work. */
export const READY = 'ready'

function answerPlans(port: MessagePort): void {
  port.on('message', (task: PlanTask) => port.postMessage(answerTask(task)))
  port.postMessage(READY)
}

/** True in a thread that plans, which then has begun to; false in the program itself. */
export function plansInThisThread(): boolean {
  if (parentPort === null || workerData !== PLANS_HERE) return false
  answerPlans(parentPort)
  return true
}
