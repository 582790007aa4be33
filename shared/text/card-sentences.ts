import { bySystem } from './by-system.ts'
import type { Card } from './card-words.ts'
import type { Say } from './language.ts'

/** A card with its figures in the reader's units and the number to call where it is read. */
export function cardFor(card: Card, emergency: string, { system }: Pick<Say, 'system'>): Card {
  const said = (text: string): string => bySystem(text.replaceAll('{emergency}', emergency), system)
  return {
    title: said(card.title),
    now: card.now.map(said),
    after: card.after.map(said),
    never: card.never.map(said),
    ...(card.note === undefined ? {} : { note: said(card.note) }),
  }
}
