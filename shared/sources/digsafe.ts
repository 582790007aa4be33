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
} as const satisfies Record<string, Source>
