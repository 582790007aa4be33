import { ES_ACCEPTED } from './es-accepted.ts'
import { ES_AIR_FIXES } from './es-air-fixes.ts'
import { ES_ASSUMED, ES_ASSUMPTIONS } from './es-assumptions.ts'
import { ES_CAUTIONS } from './es-cautions.ts'
import { ES_CHECKLIST } from './es-checklist.ts'
import { ES_CHOICE_WORDS } from './es-choice-words.ts'
import { ES_GATE } from './es-gate.ts'
import { ES_GROUND } from './es-ground.ts'
import { ES_ISSUE_PARTS, ES_ISSUES, ES_QUESTIONS } from './es-issues.ts'
import { ES_PATH } from './es-path.ts'
import { ES_RELATION_FORMULAS, ES_RELATION_REMARKS, ES_RELATION_TITLES } from './es-relation-titles.ts'
import { ES_RELATION_QUANTITIES } from './es-relation-words.ts'
import { ES_RELEASE, ES_STATUS, ES_STATUS_MEANING } from './es-release.ts'
import { ES_SOURCES } from './es-source-words.ts'
import { ES_VERDICT } from './es-verdict.ts'
import { ES_WORDS } from './es-words.ts'
import { learnSpanish } from './learned-languages.ts'

/** Every large table of Spanish; importing this file is what makes Spanish speakable. */
export const SPANISH = {
  accepted: ES_ACCEPTED,
  airFixes: ES_AIR_FIXES,
  assumed: ES_ASSUMED,
  assumptions: ES_ASSUMPTIONS,
  cautions: ES_CAUTIONS,
  checklist: ES_CHECKLIST,
  choices: ES_CHOICE_WORDS,
  gate: ES_GATE,
  ground: ES_GROUND,
  issueParts: ES_ISSUE_PARTS,
  issues: ES_ISSUES,
  path: ES_PATH,
  questions: ES_QUESTIONS,
  relationFormulas: ES_RELATION_FORMULAS,
  relationQuantities: ES_RELATION_QUANTITIES,
  relationRemarks: ES_RELATION_REMARKS,
  relationTitles: ES_RELATION_TITLES,
  release: ES_RELEASE,
  sources: ES_SOURCES,
  status: ES_STATUS,
  statusMeaning: ES_STATUS_MEANING,
  verdict: ES_VERDICT,
  words: ES_WORDS,
}

learnSpanish(SPANISH)
