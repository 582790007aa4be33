import type { Flag } from './flags.ts'
import type { SectionFacts } from './section-facts.ts'
import type { Frame } from './section-frame.ts'
import { isInView, waterReaches } from './section-ground.ts'
import { scaleNote } from './section-scale.ts'
import { crossing, shortText } from './section-utilities.ts'
import { isMarkedByApwa } from './utility-marks.ts'

/** A short clearance is always said: here, where its flag had no room for words. */
function unsaid(facts: SectionFacts, flags: readonly Flag[]): readonly string[] {
  return crossing(facts).flatMap((utility, index) => {
    const short = shortText(utility, facts)
    const name = facts.words('lineAt', { kind: utility.said.kind, m: utility.stationM })
    return short === null || (flags[index]?.lines.length ?? 0) > 1 ? [] : [`${name}: ${short}`]
  })
}

/** Whose colours the lines have, where that is not the code every reader of ours knows. */
function colourNotes({ input, utilities, palette, words }: SectionFacts): readonly string[] {
  if (utilities.length === 0) return []
  if (palette === 'australia') return [words('coloursAustralia')]
  return isMarkedByApwa(input.locate?.jurisdiction ?? null) ? [] : [words('coloursElsewhere')]
}

/** What stands under the drawing in words. */
export function sectionNotes(
  facts: SectionFacts,
  frame: Frame,
  layout: { readonly exaggeration: number; readonly metresPerInch: number | null },
  flags: readonly Flag[],
): readonly string[] {
  const { input, words } = facts
  const asked =
    input.utilities === null
      ? [words('nothingAsked')]
      : input.utilities.length === 0
        ? [input.utilitiesAsked === null ? words('nothingAsked') : words('noneAsked')]
        : []
  const below = waterReaches(facts)
    .filter((reach) => !isInView(facts, frame, reach))
    .map(({ depthM }) => words('groundwaterBelow', { m: depthM }))
  return [
    ...unsaid(facts, flags),
    ...colourNotes(facts),
    ...asked,
    ...new Set(below),
    scaleNote(facts, layout.exaggeration, layout.metresPerInch),
  ]
}
