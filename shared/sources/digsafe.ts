import type { Source } from './shape.ts'

export const digsafeSources = {
  OshaSubpartPAppendixB: {
    citation: '29 CFR 1926 Subpart P, Appendix B, Table B-1 and figures (sloping and benching)',
    standing: 'published',
    use: 'steepest slopes by soil class for excavations under 20 ft (read in copies); top widths worked from them by hand',
  },
  PrismoidalFormula: {
    citation: 'The prismoidal formula V = h/6·(A1 + 4·Am + A2), exact for a pit with plane sloped sides',
    standing: 'published',
    use: 'pit volumes worked by hand; two rules that overstate or understate them kept as negatives',
  },
  ClearanceSum: {
    citation:
      'Clearance of a bore as a sum: standard + tool radius + drift + exposure error + layout error; after Minn. Stat. 216D.05 (“known limit of control”) and 49 CFR 192.325 (12 in)',
    standing: 'our judgement',
    use: 'the sum and its two worked examples; what the standard is, the owner or a rule says',
  },
  OneCallTable: {
    citation:
      'One-call statutes, rules and notification-centre pages of 35 US states, the United Kingdom, Ontario and Australia, named row by row',
    standing: 'second hand',
    use: 'notice, life, renewal and zones; read in stored copies, not against the law in force; which fields are from memory is said in each row',
  },
  OneCallExamples: {
    citation:
      'Worked examples of notification centres and statutes: North Dakota (ndonecall.com 2017/04), South Carolina (sc811.com notice calendar), Indiana (note on HB 1122), Tex. Util. Code 251.157(a)',
    standing: 'published',
    use: 'calls and starts as printed; where only weekdays are printed, a week without holidays was taken; read in copies',
  },
  OneCallDerived: {
    citation:
      'Dates worked by hand from the text of the rules of Virginia, Pennsylvania, Oregon, Kansas, Georgia, Florida, Wisconsin, Tennessee and California',
    standing: 'second hand',
    use: 'a second calculation, independent of this program; no centre has printed these dates',
  },
  PipelineEmergencyGuide: {
    citation:
      'Pipeline Emergency Response Guidelines (Pipeline Association for Public Awareness), table of recommended minimum evacuation distances for gas pipelines: 2.28·D·√p',
    standing: 'second hand',
    use: 'the formula and five of its distances; read in a copy',
  },
  DotErg115: {
    citation:
      'US DOT Emergency Response Guidebook, guide 115 (flammable gases): isolate 100 m (330 ft) in all directions',
    standing: 'second hand',
    use: 'the least distance from a gas release; read in a training copy',
  },
  Pas128: {
    citation:
      'PAS 128:2022, Specification for underground utility detection, verification and location (BSI), quality levels',
    standing: 'second hand',
    use: 'plan and depth tolerances of B1 to B3 read on one surveyor’s page; A and the floors of B1 and B2 from memory; the standard was not read',
  },
  As5488: {
    citation: 'AS 5488.1:2022, Classification of subsurface utility information, quality levels',
    standing: 'second hand',
    use: 'B: plan read in an excerpt, depth from memory; A from memory; the standard was not read',
  },
  Asce38: {
    citation: 'ASCE/UESI/CI 38-22 and 38-02, quality levels A to D; FHWA page on quality levels',
    standing: 'second hand',
    use: 'D, C and B carry no number; A is exposed and surveyed at one point, 15 mm in the older edition and 30 mm reported for the newer: the larger is taken',
  },
} as const satisfies Record<string, Source>
