import '../../shared/text/spanish.ts'
import { ES_ACCESS } from '../access/es-access-words.ts'
import { ES_LOCATE } from '../locate/es-locate-words.ts'
import { ES_OFFLINE } from '../offline/es-offline-words.ts'
import { ES_FILES, ES_MERGE, ES_SAVE_BAR, ES_SAVED, ES_STORED } from '../saved/es-saved-words.ts'
import { ES_SHOP } from '../shop/es-shop-words.ts'
import { ES_SITE } from '../site/es-site-words.ts'
import { ES_AIR } from './es-air-words.ts'
import { ES_ANSWERS } from './es-answer-words.ts'
import { ES_FORM } from './es-form-words.ts'
import { ES_FURTHER } from './es-further-words.ts'
import { ES_GROUND_PANEL } from './es-ground-words.ts'
import { ES_GUIDE } from './es-guide-words.ts'
import { ES_OPTIONS } from './es-option-words.ts'
import { ES_SITE_FORM } from './es-site-form-words.ts'
import { ES_FIELD_WORDS, ES_SHELL, ES_WORKINGS } from './es-workings-words.ts'
import { learnSpanishWords } from './spoken-words.ts'

/** The page's own words in Spanish; importing this file teaches them and the sentences of shared/text. */
export const SPANISH_WORDS = {
  access: ES_ACCESS,
  air: ES_AIR,
  answers: ES_ANSWERS,
  fields: ES_FIELD_WORDS,
  form: ES_FORM,
  further: ES_FURTHER,
  guide: ES_GUIDE,
  groundPanel: ES_GROUND_PANEL,
  options: ES_OPTIONS,
  shell: ES_SHELL,
  shop: ES_SHOP,
  workings: ES_WORKINGS,
  saved: ES_SAVED,
  saveBar: ES_SAVE_BAR,
  merge: ES_MERGE,
  stored: ES_STORED,
  files: ES_FILES,
  offline: ES_OFFLINE,
  site: ES_SITE,
  locate: ES_LOCATE,
  siteForm: ES_SITE_FORM,
}

learnSpanishWords(SPANISH_WORDS)
