import type { PublishedCheck } from './shape.ts'

const PRINTED = { source: 'OneCallExamples', standing: 'published' } as const
const DERIVED = { source: 'OneCallDerived', standing: 'second hand' } as const

type Expected = Partial<Record<'startIso' | 'marksDueIso' | 'expiryIso' | 'renewByIso', string>>
const row = (
  name: string,
  jurisdiction: string,
  called: string,
  expected: Expected,
  from: typeof PRINTED | typeof DERIVED,
  more: Readonly<Record<string, string>> = {},
): PublishedCheck => ({
  relation: 'earliest-start',
  name,
  given: { jurisdiction, called, ...more },
  expected: Object.fromEntries(Object.entries(expected).map(([key, printed]) => [key, { printed }])),
  ...from,
})

export const checks: readonly PublishedCheck[] = [
  row(
    'ND-1: Friday before Labor Day',
    'US-ND',
    '2018-08-31T10:00',
    { startIso: '2018-09-06T00:01' },
    PRINTED,
  ),
  row(
    'ND-2: may begin on a Saturday',
    'US-ND',
    '2018-08-29T10:00',
    { startIso: '2018-09-01T00:01' },
    PRINTED,
  ),
  row(
    'SC-1: any Monday',
    'US-SC',
    '2026-03-02T09:00',
    { marksDueIso: '2026-03-05T23:59', startIso: '2026-03-06T00:00' },
    PRINTED,
  ),
  row('IN-1: Wednesday 07:01', 'US-IN', '2026-03-04T07:01', { startIso: '2026-03-09T07:00' }, PRINTED),
  row(
    'IN-2: the Monday is a holiday',
    'US-IN',
    '2026-05-20T07:01',
    { startIso: '2026-05-26T07:00' },
    PRINTED,
  ),
  row('TX-1: Saturday notice', 'US-TX', '2026-03-07T09:00', { marksDueIso: '2026-03-10T11:59' }, PRINTED),
  row(
    'TX-2: Saturday notice, Monday a holiday',
    'US-TX',
    '2026-05-23T09:00',
    { marksDueIso: '2026-05-27T11:59' },
    PRINTED,
  ),
  row('VA-1: Monday', 'US-VA', '2026-03-02T10:00', { startIso: '2026-03-05T07:00' }, DERIVED),
  row('VA-2: Saturday', 'US-VA', '2026-03-07T10:00', { startIso: '2026-03-12T07:00' }, DERIVED),
  row(
    'VA-3: update and expiry from the locate-by date',
    'US-VA',
    '2026-03-02T10:00',
    { renewByIso: '2026-03-24T23:59', expiryIso: '2026-03-26T07:00' },
    DERIVED,
  ),
  row('PA-1: Monday', 'US-PA', '2026-03-02T10:00', { startIso: '2026-03-05T00:00' }, DERIVED),
  row('PA-2: over Memorial Day', 'US-PA', '2026-05-22T10:00', { startIso: '2026-05-28T00:00' }, DERIVED),
  row('OR-1: Monday', 'US-OR', '2026-03-02T10:00', { startIso: '2026-03-05T00:00' }, DERIVED),
  row('KS-1: meeting on site', 'US-KS', '2026-03-02T10:00', { startIso: '2026-03-09T00:00' }, DERIVED, {
    meeting: 'yes',
  }),
  row(
    'GA-1: Christmas Eve kept on Thursday',
    'US-GA',
    '2021-12-22T10:00',
    { startIso: '2021-12-29T07:00' },
    DERIVED,
  ),
  row(
    'GA-2: Christmas Eve on a Sunday kept on Tuesday',
    'US-GA',
    '2023-12-22T10:00',
    { startIso: '2023-12-29T07:00' },
    DERIVED,
  ),
  row(
    'FL-1: the Friday after Thanksgiving',
    'US-FL',
    '2026-11-24T10:00',
    { startIso: '2026-12-01T00:00' },
    DERIVED,
  ),
  row('WI-1: Election Day', 'US-WI', '2022-11-07T10:00', { startIso: '2022-11-15T00:00' }, DERIVED),
  row(
    'TN-1: life of 15 days, renewal 3 working days before',
    'US-TN',
    '2026-02-27T10:00',
    { startIso: '2026-03-05T00:00', expiryIso: '2026-03-20T23:59', renewByIso: '2026-03-17T17:00' },
    DERIVED,
  ),
  row(
    'CA-1: 28 days, the day of issue counted',
    'US-CA',
    '2026-03-02T10:00',
    { expiryIso: '2026-03-29T23:59' },
    DERIVED,
  ),
]
