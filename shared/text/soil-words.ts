import type { ShotPart } from '../core/plan/plan.ts'
import { asSentence } from './by-system.ts'
import type { Language, Say } from './language.ts'
import { planWord } from './plan-words.ts'

/** A soil's name; in Spanish with its gender, for what is said of it. */
type SoilName = { readonly en: string; readonly es: string; readonly esGender: 'f' | 'm' }

const soil = (en: string, es: string, esGender: 'f' | 'm'): SoilName => ({ en, es, esGender })

/** Groups of ASTM D2487 as they are called on site. */
const SOILS: Readonly<Record<string, SoilName>> = {
  GW: soil('gravel', 'grava', 'f'),
  GP: soil('gravel', 'grava', 'f'),
  GM: soil('silty gravel', 'grava limosa', 'f'),
  GC: soil('clayey gravel', 'grava arcillosa', 'f'),
  SW: soil('sand', 'arena', 'f'),
  SP: soil('sand', 'arena', 'f'),
  SM: soil('silty sand', 'arena limosa', 'f'),
  SC: soil('clayey sand', 'arena arcillosa', 'f'),
  ML: soil('silt', 'limo', 'm'),
  CL: soil('clay', 'arcilla', 'f'),
  OL: soil('organic silt', 'limo orgánico', 'm'),
  MH: soil('plastic silt', 'limo plástico', 'm'),
  CH: soil('fat clay', 'arcilla plástica', 'f'),
  OH: soil('organic clay', 'arcilla orgánica', 'f'),
  PT: soil('peat', 'turba', 'f'),
}

const THEN: Readonly<Record<Language, string>> = { en: ', then ', es: ', luego ' }
const AND_MORE: Readonly<Record<Language, string>> = { en: ', and more', es: ' y más' }
const MOST_NAMED = 3

const nameOf = (uscs: string): SoilName | undefined => SOILS[uscs] ?? SOILS[uscs.split('-')[0] ?? '']

/** A group with what it is called: "CL (clay)". */
export function soilGroupName(uscs: string, say: Say): string {
  const name = nameOf(uscs)
  return name === undefined ? uscs : `${uscs} (${name[say.lang]})`
}

/** A soil by group and state: "stiff clay", "arcilla rígida". A borderline group goes by its first. */
export function soilWord(uscs: string, stateCode: string, say: Say): string {
  const name = nameOf(uscs) ?? soil(uscs, uscs, 'm')
  const state = planWord('ground', stateCode, say)
  if (say.lang === 'en') return `${state} ${name.en}`
  // blanda/o: the ending by the soil's gender.
  const agreed = state.replace(/a\/o\b/g, name.esGender === 'f' ? 'a' : 'o')
  return `${name.es} ${agreed}`
}

/** The ground along the bore in order, each change named once: "Stiff clay, then loose sand". */
export function groundWords(shots: readonly Pick<ShotPart, 'stretches'>[], say: Say): string {
  const names: string[] = []
  for (const { uscs, stateCode } of shots.flatMap((shot) => shot.stretches)) {
    const name = soilWord(uscs, stateCode, say)
    if (names.at(-1) !== name) names.push(name)
  }
  const more = names.length > MOST_NAMED ? AND_MORE[say.lang] : ''
  return asSentence(names.slice(0, MOST_NAMED).join(THEN[say.lang]) + more)
}
