import { describe, expect, test } from 'vitest'
import { cardFor } from '../../shared/text/card-sentences.ts'
import { CARD_SOURCES, CARDS, emergencyNumber } from '../../shared/text/card-words.ts'
import { EN_CARD_PAGE, EN_CARDS } from '../../shared/text/en-cards.ts'
import { ES_CARD_PAGE, ES_CARDS } from '../../shared/text/es-cards.ts'
import { ES_CAUTIONS } from '../../shared/text/es-cautions.ts'
import { ES_CHECKLIST } from '../../shared/text/es-checklist.ts'
import { ES_GATE } from '../../shared/text/es-gate.ts'

const linesOf = (card: (typeof EN_CARDS)['gas']) => [...card.now, ...card.after, ...card.never]
const all = CARDS.flatMap((id) => linesOf(EN_CARDS[id]))

describe('the cards', () => {
  test.each(CARDS)('%s says as much in both languages, and where it is from', (id) => {
    const [en, es] = [EN_CARDS[id], ES_CARDS[id]]
    for (const part of ['now', 'after', 'never'] as const) expect(es[part].length, part).toBe(en[part].length)
    expect(en.note === undefined).toBe(es.note === undefined)
    expect(CARD_SOURCES[id].length).toBeGreaterThan(0)
    expect(linesOf(en).filter((line) => linesOf(es).includes(line))).toEqual([])
  })

  test('on engines near gas: leave it, start nothing, and the disagreement is said', () => {
    const gas = linesOf(EN_CARDS.gas).join(' ')
    expect(gas).toContain('Leave it. Do not go back to switch anything on or off near the gas.')
    expect(gas).not.toMatch(/(shut|turn|switch) (it |them |the engine |engines )?off\b(?! near)/i)
    expect(EN_CARDS.gas.note).toMatch(/does not agree/)
    expect(EN_CARDS.gas.note).toMatch(/if the gas owner’s rule allows/)
  })

  test('upwind is one thing in Spanish: where the wind comes from, never with it or against it', () => {
    const spanish = [ES_CARDS, ES_CARD_PAGE, ES_GATE, ES_CAUTIONS, ES_CHECKLIST]
      .flatMap((words) => JSON.stringify(Object.values(words)).split(/[.;]/))
      .filter((text) => text.includes('viento'))
    expect(spanish.length).toBeGreaterThan(6)
    expect(spanish.filter((text) => !text.includes('lado de donde viene el viento'))).toEqual([])
    expect(spanish.filter((text) => /(favor del|contra el) viento/.test(text))).toEqual([])
  })

  test('never say that anything is clear or safe', () => {
    expect(
      [...all, ...Object.values(EN_CARD_PAGE).map(String)].filter((text) => /\b(clear|safe)\b/i.test(text)),
    ).toEqual([])
  })

  test('a figure is in the units of the reader, the number is that of the place', () => {
    const us = cardFor(EN_CARDS.gas, emergencyNumber('US-VA'), { system: 'us' })
    const si = cardFor(ES_CARDS.gas, emergencyNumber('GB'), { system: 'si' })
    expect(us.now.join(' ')).toMatch(/330 ft away or more.*call 911/)
    expect(si.now.join(' ')).toMatch(/100 m o más.*llame al 999/)
    expect([...linesOf(us), ...linesOf(si)].filter((line) => /[{}|]/.test(line))).toEqual([])
    expect(emergencyNumber(null)).toBe('911')
  })

  test('the page around them speaks both languages', () => {
    expect(Object.keys(ES_CARD_PAGE)).toEqual(Object.keys(EN_CARD_PAGE))
  })
})
