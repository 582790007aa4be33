import type { SourceKey } from '../../sources.ts'
import { allHoses } from './air-input.ts'
import type { CrossingInput, UtilityKind } from './crossing-input.ts'
import type { ChecklistItem, PitPart } from './plan.ts'
import type { Stretch } from './stretches.ts'

export type ChecklistFacts = {
  readonly input: CrossingInput
  readonly pits: readonly PitPart[]
  readonly stretches: readonly Stretch[]
}

const WET: readonly UtilityKind[] = ['water', 'sewer', 'storm', 'reclaimed', 'septic']
const LIVE: readonly UtilityKind[] = ['electric', 'lighting']
const GAS: readonly UtilityKind[] = ['gas', 'propane', 'oil']
/** 29 CFR 1926.302(b)(7) speaks of hoses over half an inch inside. */
const HALF_INCH_M = 0.0127
/** Damp air ices from about here; 45 °F. */
const ICING_FROM_K = 280.37
const SIX_FEET_M = 1.8288
const TWENTY_FEET_M = 6.096

type Item = readonly [
  id: string,
  when: string,
  source: SourceKey,
  applies: (facts: ChecklistFacts) => boolean,
]

const crosses =
  (kinds: readonly UtilityKind[]) =>
  ({ input }: ChecklistFacts): boolean =>
    (input.utilities ?? []).some((u) => kinds.includes(u.kind))
const deepest = (facts: ChecklistFacts): number => Math.max(0, ...facts.pits.map((pit) => pit.floorDepthM))
const overRoad = ({ input }: ChecklistFacts): boolean => input.over.some((r) => r.kind === 'road')
const isWet = ({ input }: ChecklistFacts): boolean => input.ground.some((g) => g.waterTableM !== null)
const isCold = ({ input }: ChecklistFacts): boolean =>
  (input.air.temperatureK ?? Number.POSITIVE_INFINITY) <= ICING_FROM_K
const always = (): boolean => true

/** What must be looked at before the air is opened, in the order a crew meets it. */
const ITEMS: readonly Item[] = [
  ['ticket-on-sheet', 'always', 'OneCallRules', always],
  ['owners-answered', 'always', 'VirginiaTrenchlessRule', always],
  ['white-line-whole-path', 'always', 'CgaBestPractices', always],
  ['non-members-asked', 'always', 'CommonPractice', always],
  ['trenchless-said', 'always', 'OneCallTable', always],
  ['route-walked', 'always', 'CommonPractice', always],
  ['private-lines-asked', 'private', 'CommonPractice', always],
  [
    'crossings-exposed',
    'always',
    'VirginiaTrenchlessRule',
    ({ input }) => (input.utilities ?? []).length > 0,
  ],
  [
    'watchers-and-stop-signal',
    'always',
    'VirginiaTrenchlessRule',
    ({ input }) => (input.utilities ?? []).length > 0,
  ],
  [
    'clearance-with-measured-depths',
    'always',
    'CgaBestPractices',
    ({ input }) => (input.utilities ?? []).length > 0,
  ],
  ['photos-of-marks', 'always', 'CommonPractice', always],
  ['emergency-card', 'always', 'CommonPractice', always],
  ['competent-person-today', 'always', 'Cfr1926P', always],
  ['gas-hand-exposed', 'gas', 'NewYork753', crosses(GAS)],
  ['gas-compressor-upwind', 'gas', 'CommonPractice', crosses(GAS)],
  ['gas-engines-asked', 'gas', 'CommonPractice', crosses(GAS)],
  ['gas-separation', 'gas', 'Cfr192', crosses(GAS)],
  ['power-owner-asked', 'power', 'CommonPractice', crosses(LIVE)],
  ['power-crew-briefed', 'power', 'CommonPractice', crosses(LIVE)],
  ['plant-off-overhead', 'overhead', 'OshaOverhead', ({ input }) => input.overhead.length > 0],
  ['fibre-hand-exposed', 'telecom', 'CommonPractice', crosses(['telecom'])],
  ['sewer-and-laterals-found', 'sewer', 'CrossBorePractices', crosses(WET)],
  ['water-sewer-apart', 'sewer', 'TenStatesStandards', crosses(WET)],
  ['cross-bore-looked-at', 'sewer', 'CrossBorePractices', always],
  [
    'sewer-proved-another-way',
    'proved',
    'CommonPractice',
    ({ input }) => (input.utilities ?? []).some((u) => u.evidence === 'proved'),
  ],
  [
    'parallel-exposed',
    'parallel',
    'VirginiaTrenchlessRule',
    ({ input }) => (input.utilities ?? []).some((u) => u.offsetM !== null),
  ],
  ['ladder', 'pit-4-ft', 'Cfr1926P', (facts) => facts.pits.some((pit) => pit.needsLadder)],
  ['air-tested', 'pit-4-ft', 'Cfr1926P', (facts) => facts.pits.some((pit) => pit.needsLadder)],
  ['slope-shore-shield', 'pit-5-ft', 'Cfr1926P', (facts) => facts.pits.some((pit) => pit.needsProtection)],
  ['pit-edge-guarded', 'pit-6-ft', 'Cfr1926Fall', (facts) => deepest(facts) >= SIX_FEET_M],
  ['pit-engineer', 'pit-20-ft', 'Cfr1926P', (facts) => deepest(facts) > TWENTY_FEET_M],
  [
    'paved-pits-boxed',
    'paved',
    'CommonPractice',
    (facts) => facts.pits.some((pit) => pit.shored && !pit.needsProtection),
  ],
  ['traffic-plan', 'road', 'Cfr1926P', overRoad],
  ['permit-on-site', 'road', 'CommonPractice', overRoad],
  ['levels-before-during-after', 'road', 'CommonPractice', overRoad],
  [
    'hose-cut-off',
    'hose',
    'Cfr1926Air',
    ({ input }) => allHoses(input.air).some((hose) => hose.boreM > HALF_INCH_M),
  ],
  ['whip-restraints', 'always', 'Cfr1926Air', always],
  ['hose-tape-zero', 'always', 'CommonPractice', always],
  ['bleed-before-opening', 'always', 'MineAirRule', always],
  ['oil-and-tilt-test', 'always', 'CommonPractice', always],
  ['reverse-proved', 'reverse', 'CommonPractice', ({ input }) => input.pull === 'reverse'],
  ['antifreeze-oil', 'cold', 'CommonPractice', isCold],
  ['marks-in-snow', 'cold', 'MinnesotaSnow', isCold],
  ['frost-not-shoring', 'cold', 'CommonPractice', isCold],
  ['seepage-type-c', 'water-table', 'Cfr1926P', isWet],
  ['silica-when-cutting', 'paved', 'Cfr1926Silica', (facts) => facts.pits.some((pit) => pit.shored)],
  ['noise-at-the-ear', 'always', 'Cfr1926Noise', always],
  ['exit-pit-empty-until-bled', 'always', 'CommonPractice', always],
  ['ground-bridge', 'wall', 'CommonPractice', ({ input }) => hasMetalService(input)],
  [
    'wall-from-inside',
    'wall',
    'CommonPractice',
    ({ input }) => input.ends.reception.kind === 'wall' || input.ends.launch.kind === 'wall',
  ],
  ['weak-link', 'gas-pipe', 'Cfr192', ({ input }) => input.pipes.some((pipe) => pipe.system === 'pe-gas')],
]

/** A metal service into a building may be its electrical ground: bridge before it is cut. */
function hasMetalService(input: CrossingInput): boolean {
  const metal = input.pipes.some((pipe) => pipe.system?.startsWith('copper') || pipe.system === 'steel')
  const intoBuilding = [input.ends.launch, input.ends.reception].some(
    (end) => end.kind === 'wall' || end.kind === 'inside',
  )
  return metal || intoBuilding
}

export function checklistPart(facts: ChecklistFacts): ChecklistItem[] {
  return ITEMS.filter(([, , , applies]) => applies(facts)).map(([id, when, source]) => ({ id, when, source }))
}
