import { EN_CARD_PAGE, EN_CARDS } from '../../shared/text/en-cards.ts'
import { ES_CARD_PAGE, ES_CARDS } from '../../shared/text/es-cards.ts'
import { language } from '../state/language-choice.ts'

/** Cards bring both languages with them: whoever stands beside may read the other one. */
export const cards = () => (language.value === 'es' ? ES_CARDS : EN_CARDS)
export const cardPage = () => (language.value === 'es' ? ES_CARD_PAGE : EN_CARD_PAGE)
