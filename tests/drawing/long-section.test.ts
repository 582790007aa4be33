import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { deviation } from '../../shared/core/line/deviation.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { pathAt } from '../../shared/drawing/section-facts.ts'
import { allNodes } from '../../shared/drawing/svg-tree.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'
import { BUSY, classOf, drawn, numberOf, pointsOf, scalesOf, theOne, withClass, wordsOf } from './drawn.ts'

const ALL = [...DEMO_NAMES.map((name) => [name, demoDocument(name)] as const), ['busy', BUSY] as const]
const SIZES = [
  { widthPx: 1200 },
  { widthPx: 390 },
  { widthPx: 360, system: 'si', lang: 'es' },
  { sheet: 'letter' },
  { sheet: 'a4', system: 'si' },
  { sheet: 'job' },
  { sheet: 'job', system: 'si', lang: 'es' },
] as const
const EVERY = ALL.flatMap(([name, document]) =>
  SIZES.map((size) => ({ name, document, size, about: JSON.stringify(size) })),
)

describe.each(EVERY)('$name $about', ({ document, size }) => {
  const section = drawn(document, size)
  const { tree, plan } = section
  const scale = scalesOf(section)

  test('the bore is as thick as its diameter to the vertical scale', () => {
    const bands = withClass(theOne(tree, 'bores'), 'bore')
    expect(bands).toHaveLength(plan.shots.length)
    for (const band of bands) {
      const [topLeft, , , footLeft] = pointsOf(band)
      expect((footLeft?.y ?? 0) - (topLeft?.y ?? 0)).toBeCloseTo(plan.bore.diameterM * scale.down, 1)
    }
  })

  test('the ground is above the bore all along', () => {
    const ground = pointsOf(theOne(theOne(tree, 'ground'), 'ground-line'))
    const tops = withClass(theOne(tree, 'bores'), 'bore').flatMap((band) => pointsOf(band).slice(0, 2))
    for (const top of tops) {
      const above = ground.filter((_, index) => {
        const next = ground[index + 1]
        const here = ground[index]
        return here && next && here.x < top.x && next.x >= top.x
      })
      expect(above.length).toBeGreaterThan(0)
      for (const point of above) expect(point.y).toBeLessThan(top.y)
    }
  })

  test('the cover dimension is as long as the cover', () => {
    const arrow = theOne(tree, 'cover-dimension').children[0]
    expect(numberOf(arrow, 'y2') - numberOf(arrow, 'y1')).toBeCloseTo(plan.bore.coverM * scale.down, 1)
  })

  test('every depth arrow in a pit has its figure beside it, inside the pit', () => {
    const depths = theOne(tree, 'depths')
    const arrows = ['floor-dimension', 'depth-dimension'].flatMap((name) => withClass(depths, name))
    const words = wordsOf(depths).map((each) => each.text)
    const figures = words.filter((text) => /\d/.test(text))
    expect(figures).toHaveLength(arrows.length)
    for (const arrow of arrows) {
      const body = arrow.children[0]
      const saidM = (numberOf(body, 'y2') - numberOf(body, 'y1')) / scale.down
      const near = plan.pits.some((pit) => Math.abs(pit.floorDepthM - saidM) < 0.5)
      expect(near).toBe(true)
    }
  })

  test('the cover is said in words', () => {
    expect(
      wordsOf(tree)
        .map((each) => each.text)
        .join(' '),
    ).toMatch(/cover|recubrimiento/)
  })

  test('no words lie over others, none is small, none leaves the sheet', () => {
    const words = wordsOf(tree)
    const [, , width = 0, height = 0] = String(tree.attributes.viewBox).split(' ').map(Number)
    for (const [index, one] of words.entries()) {
      expect(one.size).toBeGreaterThanOrEqual(12)
      expect([one.text, one.left >= 0 && one.right <= width + 1 && one.bottom <= height]).toEqual([
        one.text,
        true,
      ])
      const over = words
        .slice(index + 1)
        .filter(
          (two) =>
            one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom,
        )
      expect([one.text, over.map((two) => two.text)]).toEqual([one.text, []])
    }
  })

  test('every number is a number', () => {
    for (const node of allNodes(tree)) {
      expect(JSON.stringify(node.attributes)).not.toMatch(/NaN|Infinity|undefined|null/)
      expect(node.text ?? '').not.toMatch(/NaN|Infinity|undefined|\{/)
    }
  })

  test('every line listed is drawn once in each view it belongs to', () => {
    const indexes = (name: string) =>
      allNodes(theOne(tree, name)).flatMap((node) => {
        const index = node.attributes['data-utility']
        return index === undefined ? [] : [Number(index)]
      })
    const utilities = section.input.utilities ?? []
    const numbered = utilities.map((said, index) => ({ said, index }))
    const across = numbered.filter(({ said }) => said.stationM !== null).map(({ index }) => index)
    const beside = numbered
      .filter(({ said }) => said.stationM === null && Math.abs(said.offsetM ?? 0) <= 2.5)
      .map(({ index }) => index)
    expect(indexes('utilities')).toEqual(across)
    expect([...indexes('plan-strip')].sort()).toEqual([...across, ...beside].sort())
    expect(withClass(tree, 'flag')).toHaveLength(across.length)
  })

  test('a line of unknown depth is a band over all depths and never a place', () => {
    for (const [index, said] of (section.input.utilities ?? []).entries()) {
      if (said.depth || said.stationM === null) continue
      const drawing = theOne(tree, 'utilities').children.find(
        (node) => node.attributes['data-utility'] === index,
      )
      expect(drawing?.children.map((node) => node.tag)).toEqual(['rect'])
      expect(drawing?.children.flatMap(classOf)).toEqual(['fading-band'])
      const band = drawing?.children[0]
      const earth = pointsOf(theOne(theOne(tree, 'section'), 'earth'))
      const foot = numberOf(band, 'y') + numberOf(band, 'height')
      expect(foot).toBeCloseTo(Math.max(...earth.map((point) => point.y)), 1)
    }
    expect(allNodes(tree).filter((node) => node.tag === 'circle')).toEqual([])
  })

  test('a short clearance is said in words', () => {
    const short = plan.clearances.filter((each) => (each.shortM ?? 0) > 0 && each.stationM !== null)
    const said = wordsOf(tree).filter((each) => /SHORT by|FALTAN/.test(each.text))
    expect(said).toHaveLength(short.length)
  })

  test('the same crossing gives the same drawing', () => {
    const again = drawn(document, size)
    expect([again.tree, again.table, again.scaleNote]).toEqual([tree, section.table, section.scaleNote])
  })
})

describe('lines to scale', () => {
  test('a line is as large as it is, at its depth', () => {
    const section = drawn(demoDocument('firm-clay-service'))
    const { along, down } = scalesOf(section)
    const [line] = theOne(section.tree, 'utilities').children
    const body = line?.children.find((node) => node.tag === 'ellipse')
    expect(numberOf(body, 'rx') * 2).toBeCloseTo(0.0508 * along, 1)
    expect(numberOf(body, 'ry') * 2).toBeCloseTo(0.0508 * down, 1)
    const groundY = pointsOf(theOne(theOne(section.tree, 'ground'), 'ground-line'))[0]?.y ?? 0
    // Top at 20 in, 2 in across: its centre is at 21 in.
    expect(numberOf(body, 'cy') - groundY).toBeCloseTo(21 * 0.0254 * down, 1)
  })

  test('a line at a slant is cut longer by one over the sine of its angle', () => {
    const section = drawn(BUSY, { system: 'si' })
    const { along } = scalesOf(section)
    const sewer = theOne(section.tree, 'utilities').children.find(
      (node) => node.attributes['data-utility'] === 4,
    )
    const body = sewer?.children.find((node) => node.tag === 'ellipse')
    expect(numberOf(body, 'rx') * 2).toBeCloseTo(0.2 * Math.SQRT2 * along, 1)
  })

  test('seen from above a line crosses at its angle, each way to its scale', () => {
    const section = drawn(BUSY, { system: 'si', exaggeration: 1 })
    const strip = theOne(section.tree, 'plan-strip')
    const sewer = allNodes(strip).find((node) => node.attributes['data-utility'] === 4)
    const [top, , , foot] = pointsOf(sewer?.children[1])
    const dx = (foot?.x ?? 0) - (top?.x ?? 0)
    const dy = (foot?.y ?? 0) - (top?.y ?? 0)
    expect(dx).toBeCloseTo(dy, 0)
  })
})

const p90 = (plan: Plan, shot: number, stationM: number) => pathAt(plan, shot, stationM, 'vertical').p90M

describe('the envelope', () => {
  const { plan } = drawn(demoDocument('firm-clay-service'))

  test('ends at the figure of the plan and grows as the relation does', () => {
    const shot = plan.shots[0]
    if (!shot) throw new Error('a shot')
    const lengthM = shot.toM - shot.fromM
    expect(p90(plan, 0, lengthM)).toBeCloseTo(shot.deviation.verticalM.p90, 12)
    expect(p90(plan, 0, 0)).toBe(0)
    // The plan's own wandering: 5 mm over the tool's body and, in clay, a drift of 3.57 mrad/√m.
    const lengthOfTool = plan.assumptions.find((each) => each.name === 'tool.length')?.value
    const aimRad = 0.005 / Number(lengthOfTool)
    const sigma = (stationM: number) => deviation.fn({ stationM, aimRad, driftRadPerSqrtM: 3.57e-3 }).sigmaM
    expect(p90(plan, 0, lengthM / 2) / p90(plan, 0, lengthM)).toBeCloseTo(
      sigma(lengthM / 2) / sigma(lengthM),
      6,
    )
  })

  test('starts anew at every pit', () => {
    const duct = drawn(demoDocument('duct-run-five-shots')).plan
    expect(duct.shots.map((shot, index) => p90(duct, index, shot.fromM))).toEqual([0, 0, 0, 0, 0])
  })

  test('follows a look at the tool and is narrower from there; the look is drawn with its error', () => {
    const look = { station: '20 ft', method: 'sonde', right: '3 in', low: '2 in' }
    const seen = drawn({ ...demoDocument('firm-clay-service'), observations: [look] })
    expect(pathAt(seen.plan, 0, 8, 'vertical').offM).toBeGreaterThan(0.03)
    expect(pathAt(seen.plan, 0, 12, 'vertical').p90M).toBeLessThan(p90(plan, 0, 12))
    expect(withClass(seen.tree, 'look-mark')).toHaveLength(3)
    expect(withClass(seen.tree, 'likely-path')).toHaveLength(3)
    expect(withClass(drawn(demoDocument('firm-clay-service')).tree, 'look-mark')).toHaveLength(0)
  })
})

describe('scale', () => {
  test('is said in words, and what is asked for is drawn', () => {
    const asked = drawn(demoDocument('firm-clay-service'), { exaggeration: 5 })
    expect(asked.exaggeration).toBe(5)
    expect(asked.scaleNote).toBe('Vertical scale 5 times the horizontal.')
    const same = drawn(demoDocument('firm-clay-service'), { exaggeration: 1, lang: 'es' })
    expect(same.scaleNote).toBe('Profundidad y longitud a la misma escala.')
  })

  test('chooses 1, 2, 5 or 10 for crossings of ordinary length on a desk', () => {
    for (const name of DEMO_NAMES) expect([1, 2, 5, 10]).toContain(drawn(demoDocument(name)).exaggeration)
  })

  test.each([
    ['letter', 'us', 'irrigation-sleeve', 'Scale 1 in = 2 ft', 2 * 0.3048],
    ['a4', 'si', 'dense-sand-road', 'Scale 1:75', 75 * 0.0254],
  ] as const)('on %s in %s units %s is drawn to a real scale', (sheet, system, name, said, metresPerInch) => {
    const section = drawn(demoDocument(name), { sheet, system })
    expect(section.scaleNote).toContain(said)
    // 96 units to an inch of paper: the sheet's width in mm says the same.
    expect(scalesOf(section).along).toBeCloseTo(96 / metresPerInch, 2)
    const [, , width = 0] = String(section.tree.attributes.viewBox).split(' ').map(Number)
    const mm = Number(String(section.tree.attributes.width).replace('mm', ''))
    expect(width / mm).toBeCloseTo(96 / 25.4, 4)
  })
})

describe('the table behind it', () => {
  test('holds what is drawn, in the order the tool meets it', () => {
    const { table, plan } = drawn(demoDocument('firm-clay-service'))
    expect(table.rows[0]).toMatchObject({ what: 'launch pit', station: '0 ft', depthToCenter: '4 ft' })
    expect(table.rows.find((row) => row.what === 'gas')).toEqual({
      what: 'gas',
      station: '20 ft',
      depthToTop: '20 in',
      depthToCenter: '21 in',
      depthToBottom: '22 in',
      note: 'exposed, gap 23-1/4 in',
    })
    expect(table.rows.find((row) => row.what === 'bore, least cover')?.note).toBe('cover 3 ft 7-3/4 in')
    expect(table.rows.filter((row) => row.what === 'road')).toHaveLength(
      plan.bore.coverByReach.filter((r) => r.kind === 'road').length,
    )
  })

  test('has a row for every line, and says of an unknown depth that it is unknown', () => {
    const { table } = drawn(BUSY, { system: 'si' })
    const electric = table.rows.find((row) => row.what === 'electric')
    expect(electric).toMatchObject({ depthToTop: '—', depthToBottom: '—', note: 'marked, depth unknown' })
    for (const name of ['gas', 'telecom', 'water', 'sewer', 'storm drain', 'lighting cable', 'irrigation'])
      expect(table.rows.filter((row) => row.what === name)).toHaveLength(1)
    expect(table.rows.filter((row) => row.what.includes('alongside'))).toHaveLength(2)
  })
})

describe('what nobody knows', () => {
  test('nobody asked is said on the drawing, and is not an empty street', () => {
    const { utilities: _, utilitiesAsked: __, ...rest } = demoDocument('firm-clay-service')
    const texts = wordsOf(drawn(rest).tree).map((each) => each.text)
    expect(texts).toContain('Nobody has been asked about utilities: what lies here is not known.')
    const none = wordsOf(drawn({ ...rest, utilities: [] }).tree).map((each) => each.text)
    expect(none).toContain('Nobody has been asked about utilities: what lies here is not known.')
  })
})
