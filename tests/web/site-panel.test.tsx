// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { SIGN_ITEMS } from '../../shared/core/digsafe/sign-off-items.ts'
import base from '../../src/store/demo/short-side-water.json'
import { civilNow } from '../../web/site/civil-now.ts'
import { setAsideMonths } from '../../web/site/set-asides.ts'
import { signedStore } from '../../web/site/signed-store.ts'
import { SitePanel } from '../../web/site/site-panel.tsx'
import { answerFor, type Shown, signOffNow } from '../../web/site/site-state.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'
import type { JsonObject } from '../../web/state/json.ts'

const ID = '11111111-1111-4111-8111-111111111111'
const NOW = new Date(2026, 11, 1, 9, 30)
const locate = base.locate
const ticket = { ...locate.ticket, starts: '2026-11-25T07:00', expires: '2026-12-15T07:00' }
const document = { ...base, locate: { ...locate, ticket } } as JsonObject
const model = () => createCrossingModel(document, { soon: (run) => run() })

beforeEach(() => {
  localStorage.clear()
  vi.useFakeTimers({ now: NOW, toFake: ['Date'] })
  vi.stubGlobal('fetch', async () => {
    throw new TypeError('no network')
  })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

function shown(): Shown {
  const answers = model().answers.value
  if (answers.state !== 'current') throw new Error('no plan')
  return { crossing: ID, document, plan: answers.plan, input: answers.input, bore: 1 }
}
const nobody = { worksAs: () => null, goesNow: () => true }
const listed = { ...nobody, fetch: async () => [], sendPhoto: async () => true, sendSigned: async () => true }
const photosOf = (layer: string) =>
  SIGN_ITEMS.filter((each) => each.layer === layer && each.needsPhoto).map((each) => ({
    item: each.id,
    data: 'data:image/jpeg;base64,AA==',
  }))
const itemsOf = (layer: string) => SIGN_ITEMS.filter((each) => each.layer === layer).map((each) => each.id)

describe('signing', () => {
  test('without a server: kept here, counted here, sent when it can be', async () => {
    let isOnline = false
    const sent: string[] = []
    const doors = {
      fetch: async () => (isOnline ? [] : null),
      sendPhoto: async () => isOnline,
      sendSigned: async ({ id }: { readonly id: string }) => {
        if (isOnline) sent.push(id)
        return isOnline
      },
      now: () => NOW.getTime(),
      ...nobody,
    }
    const store = signedStore(ID, doors)
    expect(await store.sign(signOffNow(shown(), { layer: 'day', by: 'Ada' }, NOW), photosOf('day'))).toBe(
      true,
    )
    expect(store.signed.value).toMatchObject([{ isSent: false }])
    expect(signedStore(ID, doors).signed.value).toEqual(store.signed.value)
    expect(store.asOfMs.value).toBeNull()
    isOnline = true
    await store.refresh()
    expect(sent).toHaveLength(1)
    expect(store.asOfMs.value).toBe(NOW.getTime())
  })

  test('all three layers, here and heard: ready; by noon of the next day: hold', async () => {
    const store = signedStore(ID, { ...listed, fetch: async () => null, now: () => NOW.getTime() })
    for (const layer of ['site', 'day', 'bore'] as const) {
      const watchers = ['Bo', 'Cy', 'Di']
      const file = signOffNow(shown(), { layer, by: 'Ada', items: itemsOf(layer), watchers }, NOW)
      await store.sign(file, photosOf(layer))
    }
    const at = (isHere: boolean, nowMs: number, heardMs: number | null = nowMs) =>
      answerFor(shown(), store.signed.value, heardMs, isHere, nowMs)
    expect(at(true, NOW.getTime())).toMatchObject({ status: 'ready', why: null })
    expect(at(false, NOW.getTime())).toMatchObject({ status: 'check', why: 'elsewhere' })
    expect(at(true, NOW.getTime(), null)).toMatchObject({ status: 'check', why: 'stale' })
    expect(at(true, NOW.getTime() + 27 * 3_600_000).status).toBe('hold')
    const deeper = { ...shown(), document: { ...document, name: 'Another' } }
    expect(answerFor(deeper, store.signed.value, NOW.getTime(), true, NOW.getTime()).status).toBe('hold')
  })

  test('goes out under the name of whoever signed, or waits for them', async () => {
    let who = 'ada'
    const sent: string[] = []
    const doors = {
      ...listed,
      fetch: async () => null,
      sendSigned: async ({ file }: { readonly file: { readonly by: string } }) => sent.push(file.by) > 0,
      now: () => NOW.getTime(),
      worksAs: () => 'ada',
      goesNow: (madeBy: string | null) => madeBy === who,
    }
    who = 'bo'
    const store = signedStore(ID, doors)
    await store.sign(signOffNow(shown(), { layer: 'day', by: 'Ada' }, NOW), [])
    expect(sent).toEqual([])
    who = 'ada'
    await store.refresh()
    expect(sent).toEqual(['Ada'])
  })

  test('the clock is that of the place', () => {
    expect(civilNow(NOW)).toMatchObject({ day: '2026-12-01', time: '09:30' })
  })
})

test('a rule two people set aside is said beside the status, ready or not', async () => {
  const line = { kind: 'telecom', station: '16 ft', depth: '10 in', depthTo: 'top', diameter: '1 in' }
  const one = { ...document, utilities: [{ ...line, private: true, evidence: 'marked' }] } as JsonObject
  const unopened = createCrossingModel(one, { soon: (run) => run() })
  const answers = unopened.answers.value
  if (answers.state !== 'current') throw new Error('no plan')
  const here = { crossing: ID, document: one, plan: answers.plan, input: answers.input, bore: 1 }
  const setAside = { code: 'line-not-exposed', line: 1, reason: 'hand dug to it', second: 'Eve' }
  const silent = {
    ...listed,
    fetch: async () => null,
    sendSigned: async () => false,
    now: () => NOW.getTime(),
  }
  await signedStore(ID, silent).sign(signOffNow(here, { layer: 'bore', by: 'Ada', setAside }, NOW), [])
  render(<SitePanel crossing={ID} model={unopened} />)
  expect(await screen.findByText(/Rules of the plan not met, set aside by two people: 1\./)).toBeTruthy()
})

test('rules set aside are counted by month, the last first', () => {
  const setAside = { code: 'clearance-short', reason: 'hand dug to it', second: 'Eve' }
  const on = (day: string) => ({
    ...signOffNow(shown(), { layer: 'bore', by: 'Ada', setAside }, NOW),
    on: day,
  })
  const plain = signOffNow(shown(), { layer: 'day', by: 'Ada' }, NOW)
  const months = setAsideMonths([on('2026-11-03'), on('2026-12-01'), on('2026-11-20'), plain])
  expect(months.map(({ month, files }) => [month, files.length])).toEqual([
    ['2026-12', 1],
    ['2026-11', 2],
  ])
})

describe('the panel', () => {
  test('names what is open, takes a signature once for a layer, and never says ready by itself', async () => {
    render(<SitePanel crossing={ID} model={model()} />)
    expect(screen.getByText('Hold')).toBeTruthy()
    const day = screen.getByText('Once a day').closest('.site-layer') as HTMLElement
    fireEvent.click(within(day).getByRole('button', { name: 'Sign for all of these' }))
    expect(await within(day).findByText('A name first.')).toBeTruthy()
    fireEvent.input(within(day).getByLabelText('Your name'), { target: { value: 'Ada' } })
    fireEvent.click(within(day).getByRole('button', { name: 'Sign for all of these' }))
    expect(await within(day).findByText('Signed.')).toBeTruthy()
    // The photo of the hose joints is still wanted.
    expect(within(day).getByText('1 open')).toBeTruthy()
    expect(screen.queryByText('Ready')).toBeNull()
  })

  test('what cannot be planned cannot be signed for', () => {
    const broken = model()
    broken.set('tool.diameter', 'a lot')
    render(<SitePanel crossing={ID} model={broken} />)
    expect(screen.getByText(/cannot be planned/)).toBeTruthy()
  })
})
