import { done, type Outcome } from '../outcome.ts'
import type { Trace } from '../trace.ts'
import { type AirResult, airPart } from './air.ts'
import type { Assumed } from './assumptions.ts'
import { type BoreSize, boreSize } from './bore.ts'
import { type BoreLine, layBoreLine } from './bore-line.ts'
import type { CrossingInput } from './crossing-input.ts'
import { findPipes, type PipeFacts } from './pipes.ts'
import { layStretches, type Stretch } from './stretches.ts'
import { type ToolFacts, toolFacts } from './tool-facts.ts'

/** What a plan rests on once everything that can have no physical answer has been asked. */
export type Resolved = {
  readonly input: CrossingInput
  readonly pipes: readonly PipeFacts[]
  readonly size: BoreSize
  readonly line: BoreLine
  readonly stretches: readonly Stretch[]
  readonly tool: ToolFacts
  readonly air: AirResult
}

/** Finds the pipes, lays the line and the ground, and meets compressor, hoses and tool; refuses what cannot be. */
export function resolveCrossing(input: CrossingInput, assumed: Assumed, trace: Trace): Outcome<Resolved> {
  const pipes = findPipes(input, assumed)
  if (!pipes.ok) return pipes
  const size = boreSize(input, pipes.value, assumed, trace)
  if (!size.ok) return size
  const line = layBoreLine(input, size.value.diameterM, assumed, trace)
  if (!line.ok) return line
  const stretches = layStretches(input, line.value, assumed)
  if (!stretches.ok) return stretches
  const tool = toolFacts(input.tool, assumed, trace)
  const air = airPart(input, tool, assumed, trace)
  if (!air.ok) return air
  return done({
    input,
    pipes: pipes.value,
    size: size.value,
    line: line.value,
    stretches: stretches.value,
    tool,
    air: air.value,
  })
}
