import { describe, expect, it } from 'vitest'
import { parsePipeNote, parseSptNote } from '../../shared/quantities/parse-trade.ts'

describe('pipe notes', () => {
  it.each([
    ['3/4 K', { system: 'copper-b88', size: '3/4', wall: 'K' }],
    ['3/4 K cu', { system: 'copper-b88', size: '3/4', wall: 'K' }],
    ['1" K', { system: 'copper-b88', size: '1', wall: 'K' }],
    ['1 in type L copper', { system: 'copper-b88', size: '1', wall: 'L' }],
    ['22 mm copper B', { system: 'copper-metric', size: '22', wall: 'B', outsideDiameterM: 0.022 }],
    ['1" CTS', { system: 'pe-cts', size: '1', dimensionRatio: null }],
    ['1” CTS SDR 9', { system: 'pe-cts', size: '1', dimensionRatio: 9 }],
    ['2" IPS DR-11', { system: 'hdpe-ips', size: '2', dimensionRatio: 11 }],
    ['1-1/4 IPS SDR 13.5', { system: 'hdpe-ips', size: '1-1/4', dimensionRatio: 13.5 }],
    ['1.25" IPS', { system: 'hdpe-ips', size: '1-1/4' }],
    ['1¼" IPS', { system: 'hdpe-ips', size: '1-1/4' }],
    ['1" poly IPS', { system: 'hdpe-ips', size: '1' }],
    ['4" SDR35', { system: 'pvc-sewer', size: '4', dimensionRatio: 35 }],
    ['32 mm PE', { system: 'pe-iso', size: '32', outsideDiameterM: 0.032 }],
    ['32 mm PE SDR 11', { system: 'pe-iso', size: '32', dimensionRatio: 11 }],
    ['Ø32 mm', { system: null, size: null, outsideDiameterM: 0.032 }],
    ['1.315 in OD', { system: null, outsideDiameterM: 0.033401 }],
    ['1" PEX', { system: 'pex-cts', size: '1' }],
    ['1" gas CTS', { system: 'pe-gas', size: '1 CTS' }],
    ['2 in IPS gas SDR 11', { system: 'pe-gas', size: '2 IPS SDR11', dimensionRatio: 11 }],
    ['2" sch 40 PVC', { system: 'pvc-pressure', size: '2', wall: 'SCH40' }],
    ['2" PVC conduit sch 80', { system: 'pvc-conduit', wall: 'SCH80' }],
    ['1" EMT', { system: 'metal-conduit', wall: 'EMT' }],
    ['2" steel', { system: 'steel', size: '2' }],
    ['4" DIPS DR 11', { system: 'pe-dips', size: '4', dimensionRatio: 11 }],
    ['14/10 microduct', { system: 'microduct', size: '14/10', outsideDiameterM: 0.014 }],
    [
      '2 x 1-1/4 SDR 13.5 w/ pull tape',
      { system: 'hdpe-conduit', size: '1-1/4', dimensionRatio: 13.5, count: 2 },
    ],
  ])('%s', (text, wanted) => expect(parsePipeNote(text)).toMatchObject({ ok: true, ...wanted }))

  it.each([
    ['1-1/4 SDR 13.5', ['1-1/4 in SDR 13.5 CTS', '1-1/4 in SDR 13.5 IPS', '1-1/4 in SDR 13.5 conduit']],
    ['1" poly', ['1 in poly CTS', '1 in poly IPS']],
    ['1"', ['1 in CTS', '1 in IPS', '1 in K']],
    ['2" PVC', ['2 in PVC SCH 40', '2 in PVC SDR 35', '2 in PVC conduit']],
    ['Ø32', ['32 mm', '32 in']],
    ['32 PE', ['32 mm PE', '32 in PE']],
    ['11/4 K', ['1-1/4 K', '2.75 K']],
  ])('%s is asked about', (text, offered) => {
    const note = parsePipeNote(text)
    if (note.ok) throw new Error(JSON.stringify(note))
    expect(note.issue.code).toBe('ask')
    expect((note.issue.candidates ?? []).map((each) => each.value)).toEqual(offered)
    for (const value of offered)
      if (!value.startsWith('32 in')) expect(parsePipeNote(value).ok, value).toBe(true)
  })

  it.each(['', 'pipe', '1" CTS banana', '0 K', '1,5 in CTS', 'K', {}, '9'.repeat(70)])(
    '%s is refused',
    (text) => expect(parsePipeNote(text).ok).toBe(false),
  )
})

describe('blow counts', () => {
  it.each<[unknown, number]>([
    ['N=9', 9],
    ['9', 9],
    [9, 9],
    ['N60 = 12', 12],
    ['9 blows/ft', 9],
    ['9 bpf', 9],
    ['3-4-5', 9],
    ['3/4/5', 9],
  ])('%s is %d', (text, sptN) => expect(parseSptNote(text)).toEqual({ ok: true, sptN }))

  it('a spoon that stopped is asked about', () => {
    expect(parseSptNote('50/3"')).toMatchObject({ ok: false, issue: { code: 'ask' } })
    expect(parseSptNote('many')).toMatchObject({ ok: false, issue: { code: 'not-a-quantity' } })
  })
})
