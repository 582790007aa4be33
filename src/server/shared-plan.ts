import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { SharedPlan } from '../../shared/contracts/shared-plan.ts'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { drawingStyle } from '../../shared/drawing/drawing-style.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import { standaloneSvg } from '../../shared/drawing/svg-text.ts'
import { cautionSentence } from '../../shared/text/caution-sentences.ts'
import type { Say } from '../../shared/text/language.ts'
import { releaseSentence, statusMeaning } from '../../shared/text/release-sentences.ts'
import type { PlanDocument } from '../plan-document.ts'

const DRAWING_WIDTH_PX = 960

/** The cautions that are for people outside; the others are for the crew, and speak of its tools. */
const FOR_OUTSIDERS: readonly string[] = ['plan-does-not-permit', 'unlisted-lines']

/** The part of a plan that is shown to people without an account; `document` is only drawn from. */
export function sharedPart(document: unknown, plan: PlanDocument, say: Say): SharedPlan['plan'] {
  const input = parseCrossing(document)
  if (!input.ok) return null
  const { tree } = longSection(input.value, plan, {
    system: say.system,
    lang: say.lang,
    widthPx: DRAWING_WIDTH_PX,
    sheet: 'screen',
  })
  return {
    status: plan.release.status,
    statusText: statusMeaning(plan.release.status, say.lang),
    reasons: plan.release.reasons.map((reason) => ({
      code: reason.code,
      text: releaseSentence(reason, say),
    })),
    cautions: plan.cautions
      .filter(({ id }) => FOR_OUTSIDERS.includes(id))
      .map((caution) => ({ code: caution.id, text: cautionSentence(caution, say) })),
    bore: {
      lengthM: plan.bore.lengthM,
      diameterM: plan.bore.diameterM,
      coverM: plan.bore.coverM,
    },
    shots: plan.shots.map(({ fromM, toM, depthFromM, depthToM }) => ({ fromM, toM, depthFromM, depthToM })),
    lines: plan.clearances.map(({ kind, stationM, axisDepthM, separationM, requiredM, shortM }) => ({
      kind,
      stationM,
      axisDepthM,
      separationM,
      requiredM,
      shortM,
    })),
    drawing: standaloneSvg(tree, drawingStyle('file')),
  }
}

export const sharedAnswer = (
  about: { readonly name: string; readonly changedAt: string; readonly expiresAt: string },
  plan: SharedPlan['plan'],
): SharedPlan => ({ schema: 'underlane/shared-plan@1', ...about, engine: ENGINE_VERSION, plan })
