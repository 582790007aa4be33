import type { CrossingInput, UtilityInput } from '../../shared/core/plan/crossing-input.ts'
import type { ClearancePart, Plan } from '../../shared/core/plan/plan.ts'
import { NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { saidTapeDepth, saidTapeSafely } from '../../shared/text/say-quantity.ts'
import { wayOutSentence } from '../../shared/text/verdict-sentence.ts'
import { shown, shownDug, shownRoughly } from '../fields/shown.ts'
import { profileWord } from '../profile/profile-words.ts'
import { say } from '../state/unit-choice.ts'
import { FURTHER } from '../words/further-words.ts'
import { SheetTable } from './sheet-parts.tsx'
import { sheetWord } from './sheet-words.ts'

type Props = { readonly plan: Plan; readonly input: CrossingInput }

function depthGiven({ depth }: UtilityInput): string {
  if (depth === null) return NO_NUMBER
  const datum = profileWord(depth.to, say.value)
  return `${saidTapeDepth(depth.valueM, say.value)} ${sheetWord('to', say.value, { datum })}`
}

function gapText(clearance: ClearancePart | undefined): string {
  if (clearance === undefined || clearance.gapM === null) return NO_NUMBER
  const { gapM, requiredM, shortM, parts } = clearance
  // Side to side, as the gap is: what is required from the axis less half the bore.
  const needed = saidTapeSafely(requiredM - parts.toolRadiusM, 'up', say.value)
  const pair = `${saidTapeSafely(gapM, 'down', say.value)} / ${needed}`
  if (shortM === null || shortM <= 0) return pair
  return `${pair}. ${sheetWord('shortBy', say.value, { m: saidTapeSafely(shortM, 'up', say.value) })}`
}

function rowOf(utility: UtilityInput, index: number, plan: Plan) {
  const clearance = plan.clearances.find((each) => each.utility === index)
  const owner = utility.owner === null ? '' : `, ${utility.owner}`
  const isShort = clearance !== undefined && (clearance.shortM ?? 0) > 0
  return {
    key: `${index} ${utility.kind}`,
    cells: [
      `${index + 1}. ${planWord('utility', utility.kind, say.value)}${owner}`,
      utility.stationM === null
        ? sheetWord('beside', say.value, { m: shown(Math.abs(utility.offsetM ?? 0), 'length') })
        : shown(utility.stationM, 'length'),
      depthGiven(utility),
      shown(utility.diameterM, 'diameter'),
      planWord('evidence', utility.evidence, say.value),
      shown(clearance?.axisDepthM ?? null, 'depth'),
      gapText(clearance),
      '',
    ],
    ...(isShort && { note: wayOutSentence(clearance, say.value) }),
  }
}

/** Every line named, with a place to write what was measured in its hole. */
export function SheetLines({ plan, input }: Props) {
  const { utilities, utilitiesAsked } = input
  const W = FURTHER.lines
  const words = say.value
  const asked = utilitiesAsked === null ? null : sheetWord('noneNamed', words, utilitiesAsked)
  return (
    <section>
      <h2>{W.heading}</h2>
      {utilities === null || utilities.length === 0 ? (
        <p>{(utilities === null ? null : asked) ?? sheetWord('nobodyAsked', words)}</p>
      ) : (
        <>
          <SheetTable
            caption={W.caption}
            columns={(
              ['line', 'at', 'depth', 'size', 'evidence', 'boreDepth', 'gap', 'measured'] as const
            ).map((key) => sheetWord(key, words))}
            rows={utilities.map((utility, index) => rowOf(utility, index, plan))}
          />
          <p>{W.nothingOthers}</p>
        </>
      )}
    </section>
  )
}

export function SheetPits({ plan: { pits } }: Pick<Props, 'plan'>) {
  const P = FURTHER.pits
  if (pits.length === 0) return null
  return (
    <section>
      <h2>{P.heading}</h2>
      <SheetTable
        caption={P.caption}
        columns={P.columns}
        rows={pits.map((pit) => {
          const serves = planWord('pitServes', pit.serves, say.value)
          const mind = [
            pit.needsLadder ? P.ladder : null,
            pit.needsProtection ? P.protection : null,
            pit.shored ? P.shored : null,
          ].filter((each) => each !== null)
          return {
            key: `${pit.serves} ${pit.atM}`,
            cells: [
              pit.kind === 'pit' ? serves : `${serves}: ${planWord('end', pit.kind, say.value)}`,
              shown(pit.atM, 'length'),
              shown(pit.floorDepthM, 'depth'),
              `${shownRoughly(pit.lengthM)} × ${shownRoughly(pit.widthM)}`,
              shownDug(pit.volumeM3),
              mind.length === 0 ? NO_NUMBER : mind.join(', '),
            ],
          }
        })}
      />
    </section>
  )
}
