import { NO_NUMBER } from '../quantities/format-quantity.ts'
import { planWord } from '../text/plan-words.ts'
import { saidQuantity, saidTapeDepth } from '../text/say-quantity.ts'
import type { SectionFacts } from './section-facts.ts'
import { soilReaches, waterReaches } from './section-ground.ts'
import { gapText, shortText } from './section-utilities.ts'

export type TableRow = {
  readonly what: string
  readonly station: string
  readonly depthToTop: string
  readonly depthToCenter: string
  readonly depthToBottom: string
  readonly note: string
}
/** The drawing for those who do not see it: the same figures, row by row along the bore. */
export type SectionTable = {
  readonly caption: string
  readonly head: TableRow
  readonly rows: readonly TableRow[]
}

type Placed = { readonly atM: number; readonly row: TableRow }

const row = (what: string, station: string, more: Partial<TableRow> = {}): TableRow => ({
  what,
  station,
  depthToTop: NO_NUMBER,
  depthToCenter: NO_NUMBER,
  depthToBottom: NO_NUMBER,
  note: '',
  ...more,
})

function boreAt(facts: SectionFacts, what: string, stationM: number, note: string): Placed {
  const { line, radiusM, say } = facts
  const depth = (m: number) => saidQuantity(m, 'depth', say)
  const axisM = line.axisDepthM(stationM)
  return {
    atM: stationM,
    row: row(what, saidQuantity(stationM, 'length', say), {
      depthToTop: depth(axisM - radiusM),
      depthToCenter: depth(axisM),
      depthToBottom: depth(axisM + radiusM),
      note,
    }),
  }
}

const pitSizeOf = ({ lengthM, widthM }: SectionFacts['plan']['pits'][number]) => ({ lengthM, widthM })

function ends(facts: SectionFacts): readonly Placed[] {
  const { input, line, plan, say, words } = facts
  const stations = [0, ...line.shots.map((shot) => shot.toM)]
  return stations.map((atM, index) => {
    const pit = plan.pits.find((each) => each.atM === atM)
    const end = index === 0 ? input.ends.launch : input.ends.reception
    const name =
      pit && pit.kind === 'pit'
        ? planWord('pitServes', pit.serves, say)
        : planWord('end', pit?.kind ?? end.kind, say)
    const isWall = !pit && end.kind === 'wall'
    const footing =
      end.footingDepthM === null ? words('footingUnknown') : words('footing', { m: end.footingDepthM })
    const notes = [
      ...(pit ? [words('floor', { m: pit.floorDepthM }), words('pitSizeSaid', pitSizeOf(pit))] : []),
      ...(pit?.shored ? [words('shored')] : []),
      ...(isWall ? [footing] : []),
      ...(isWall && index > 0 && facts.stopShortM !== null
        ? [words('stopShort', { m: facts.stopShortM })]
        : []),
    ]
    return boreAt(facts, name, atM, notes.join(', '))
  })
}

const span = ({ say }: SectionFacts, fromM: number, toM: number): string =>
  `${saidQuantity(fromM, 'length', say)} – ${saidQuantity(toM, 'length', say)}`

function lines(facts: SectionFacts): readonly Placed[] {
  const { say, words } = facts
  return facts.utilities.map((utility) => {
    const { said, depths } = utility
    const tape = (m: number) => saidTapeDepth(m, say)
    const name = planWord('utility', said.kind, say)
    const evidence = planWord('evidence', said.evidence, say)
    const what =
      said.stationM === null ? words('alongside', { kind: said.kind, m: Math.abs(said.offsetM ?? 0) }) : name
    const measured = depths
      ? utility.isMeasured
        ? []
        : [words('depthNotMeasured')]
      : [words('depthUnknown')]
    const size = said.diameterM === null && depths ? [words('sizeUnknown')] : []
    return {
      atM: said.stationM ?? 0,
      row: row(what, said.stationM === null ? NO_NUMBER : saidQuantity(said.stationM, 'length', say), {
        ...(depths && {
          depthToTop: tape(depths.topM),
          depthToCenter: tape(depths.centreM),
          depthToBottom: tape(depths.bottomM),
        }),
        note: [evidence, ...measured, ...size, shortText(utility, facts), gapText(utility, facts)]
          .filter((text) => text !== null)
          .join(', '),
      }),
    }
  })
}

function ground(facts: SectionFacts): readonly Placed[] {
  const { line, plan, say, words } = facts
  return [
    ...line.reaches.map((reach) => ({
      atM: reach.fromM,
      row: row(planWord('surface', reach.kind, say), span(facts, reach.fromM, reach.toM)),
    })),
    ...soilReaches(facts).map((reach) => ({
      atM: reach.fromM,
      row: row(words('rowGround', { text: reach.word }), span(facts, reach.fromM, reach.toM)),
    })),
    ...waterReaches(facts).map((reach) => ({
      atM: reach.fromM,
      row: row(words('rowGroundwater'), span(facts, reach.fromM, reach.toM), {
        depthToTop: saidQuantity(reach.depthM, 'depth', say),
      }),
    })),
    ...plan.shots.map((shot, index) => ({
      atM: shot.toM,
      row: row(words('rowBore'), span(facts, shot.fromM, shot.toM), {
        note: words('rowEnvelope', {
          n: index + 1,
          m: Math.max(shot.deviation.verticalM.p90, shot.deviation.lateralM.p90),
        }),
      }),
    })),
  ]
}

export function longSectionTable(facts: SectionFacts): SectionTable {
  const { bore } = facts.plan
  const { words } = facts
  const placed = [
    ...ends(facts),
    boreAt(facts, words('rowLeastCover'), bore.coverAtM, words('cover', { m: bore.coverM })),
    ...lines(facts),
    ...ground(facts),
  ]
  return {
    caption: words('tableCaption'),
    head: {
      what: words('tableWhat'),
      station: words('tableStation'),
      depthToTop: words('tableTop'),
      depthToCenter: words('tableCenter'),
      depthToBottom: words('tableBottom'),
      note: words('tableNote'),
    },
    // In the order the tool meets them; ends of equal station keep the order above.
    rows: placed.sort((a, b) => a.atM - b.atM).map((each) => each.row),
  }
}
