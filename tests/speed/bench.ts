import { writeFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { quantileInPlace } from '../../shared/core/numerics/select.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import { drawFactors } from '../../shared/core/plan/draw-factors.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import denseSand from '../../src/store/demo/dense-sand-road.json' with { type: 'json' }
import ducts from '../../src/store/demo/duct-run-five-shots.json' with { type: 'json' }
import firmClay from '../../src/store/demo/firm-clay-service.json' with { type: 'json' }
import { CHAIN, oneHose, solve, TREE_OF_FOUR } from './air-solves.ts'

/** Speed side by side in one run, as ratios: an absolute millisecond says more of the machine than of the program. */
type Row = {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly baseline: number
  readonly ratio: number
}

function inputOf(document: unknown): CrossingInput {
  const parsed = parseCrossing(document)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues))
  return parsed.value
}

const DRAWS = 1024
const ROUNDS = 60

/**
 * What no draw loop can do without: per draw the exponential of the planning rate, one product a factor, and one
 * selection at the end. The lower bound a plan of one stretch is held against.
 */
function bareLoop(): number {
  const factors = drawFactors(1, DRAWS)
  const times = new Float64Array(DRAWS)
  for (let i = 0; i < DRAWS; i++) {
    const energy = factors.energy[i] as number
    const model = factors.lognormal('model', 0.25)[i] as number
    times[i] = 1 / -Math.expm1(-energy / model)
  }
  return quantileInPlace(times, 0.5)
}

function medianMs(work: () => unknown): number {
  const took = Array.from({ length: ROUNDS }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return took.sort((a, b) => a - b)[ROUNDS >> 1] as number
}

const cases = [
  ['plan, one stretch of clay', firmClay],
  ['plan, one stretch of sand', denseSand],
  ['plan, five shots', ducts],
] as const

for (const [, document] of cases) planCrossing(inputOf(document))
for (let i = 0; i < 200; i++) bareLoop()
const rows: Row[] = cases.map(([name, document]) => {
  const input = inputOf(document)
  for (let i = 0; i < 40; i++) planCrossing(input)
  const baseline = medianMs(bareLoop)
  const value = medianMs(() => planCrossing(input))
  return { name: `${name}, ${DRAWS} draws`, value, unit: 'ms', baseline, ratio: value / baseline }
})

/** Times a second: as many as fit a fifth of a second, so that the clock's step does not count. */
function perSecond(work: () => unknown): number {
  const start = performance.now()
  let times = 0
  while (performance.now() - start < 200) {
    for (let i = 0; i < 20; i++) work()
    times += 20
  }
  return (1000 * times) / (performance.now() - start)
}

for (const [name, tree] of [
  ['air solve, chain of three hoses', CHAIN],
  ['air solve, tree of four tools', TREE_OF_FOUR],
] as const) {
  perSecond(() => solve(tree))
  const baseline = perSecond(oneHose)
  const value = perSecond(() => solve(tree))
  rows.push({ name, value, unit: '1/s', baseline, ratio: value / baseline })
}

const at = process.argv.indexOf('--json')
const file = at < 0 ? undefined : process.argv[at + 1]
const machine = `${cpus()[0]?.model ?? 'unknown'}, Node ${process.version}`
if (file) writeFileSync(file, `${JSON.stringify({ machine, rows }, null, 2)}\n`)
for (const row of rows) {
  process.stdout.write(
    `${row.name.padEnd(42)} ${row.value.toFixed(3)} ${row.unit}   bare ${row.baseline.toFixed(3)} ${row.unit}   ratio ${row.ratio.toPrecision(3)}\n`,
  )
}
