import { type Signal, signal } from '@preact/signals'
import type { Plan } from '../../shared/core/plan/plan.ts'
import type { CrossingModel } from './crossing-model.ts'
import type { JsonObject } from './json.ts'

/** One way of doing a crossing, put aside to hold another against: the file as typed and its plan. */
export type Variant = { readonly document: JsonObject; readonly plan: Plan }

/** Kept as long as the crossing is in hand, whatever page is looked at meanwhile. */
const kept = new WeakMap<CrossingModel, Signal<Variant | null>>()

export function variantOf(model: CrossingModel): Signal<Variant | null> {
  const found = kept.get(model) ?? signal<Variant | null>(null)
  kept.set(model, found)
  return found
}
