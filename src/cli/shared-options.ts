import { Option } from 'commander'
import type { Language } from '../../shared/text/language.ts'
import { LANGUAGES } from '../language.ts'

export type AnswerOptions = { readonly json?: true; readonly lang: Language }

export const jsonOption = () => new Option('--json', 'one JSON document on stdout and nothing else')

export const languageOption = () =>
  new Option('--lang <language>', 'language of the sentences').choices([...LANGUAGES]).default('en')
