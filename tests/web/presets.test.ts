import { describe, expect, test } from 'vitest'
import { PRESETS } from '../../web/crossings/presets.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'

describe.each(PRESETS)('the usual job $id', ({ document }) => {
  const { answers } = createCrossingModel(document, { soon: (run) => run() })

  test('can be planned as it stands', () => {
    expect(answers.value.state === 'current' ? [] : answers.value.issues).toEqual([])
  })

  test('says nothing of other lines or of a ticket, and is held for that', () => {
    if (answers.value.state !== 'current') throw new Error('not planned')
    const { status, reasons } = answers.value.plan.release
    expect(status).toBe('hold')
    const codes = reasons.map((each) => each.code)
    expect(codes).toContain('lines-not-asked')
    expect(codes).toContain('locate-not-asked')
  })

  test('has a price', () => {
    expect(answers.value.state === 'current' && answers.value.plan.price?.quotedMinorUnits).toBeGreaterThan(0)
  })
})
