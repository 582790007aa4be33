import type { Source } from './shape.ts'

/** Rules and practice a check list or a caution rests on. Local law, the ticket and the owners always win. */
export const practiceSources = {
  CommonPractice: {
    citation: 'Common practice of the trade; no published source',
    standing: 'common practice',
    use: 'defaults and rules of thumb, from memory; all of them can be edited',
  },
  OurJudgement: {
    citation: 'The judgment of the makers of Underlane',
    standing: 'our judgement',
    use: 'choices made where neither a publication nor common practice decides',
  },
  YourValue: {
    citation: 'A value you gave',
    standing: 'your value',
    use: 'whatever the crossing file or the form says',
  },
  ExactIdentity: {
    citation: 'An identity that follows from the definitions, worked by hand',
    standing: 'published',
    use: 'closed forms and arithmetic that need no measurement',
  },
  OneCallRules: {
    citation: 'State one-call (call before you dig) statutes and the ticket itself',
    standing: 'second hand',
    use: 'the printed start and expiry of the ticket decide; read in copies of statutes and notification-centre pages',
  },
  VirginiaTrenchlessRule: {
    citation: '20 VAC 5-309-150, Virginia Administrative Code: trenchless excavation',
    standing: 'published',
    use: 'responses against marks, every line in the path exposed by hand, the head watched through each hole; taken as the default everywhere; read in a copy',
  },
  CgaBestPractices: {
    citation: 'Common Ground Alliance Best Practices 2-13 and 4-19 (trenchless excavation)',
    standing: 'published',
    use: 'radial clearance kept in design; entrance pit, path and exit pit located; read in a copy',
  },
  Cfr1926P: {
    citation: '29 CFR 1926.650–.652 and appendices A and B (excavations)',
    standing: 'published',
    use: 'access from 4 ft, protection from 5 ft, spoil 2 ft back, daily inspection by a competent person; read in copies',
  },
  Cfr1926Fall: {
    citation: '29 CFR 1926.501(b)(7) (fall protection at excavations)',
    standing: 'published',
    use: 'guard or cover at wells, pits and shafts 6 ft and deeper; seen in part',
  },
  OshaOverhead: {
    citation: '29 CFR 1926.1408, table A; OSHA construction eTool (power lines overhead)',
    standing: 'second hand',
    use: '10 ft up to 50 kV read in the eTool; larger distances by voltage from memory',
  },
  MinnesotaSnow: {
    citation: 'Minn. Stat. 216D.05 (marks in snow)',
    standing: 'published',
    use: 'black instead of white in snow; read in a copy',
  },
  Cfr1926Air: {
    citation: '29 CFR 1926.302(b) and OSHA letter of 6 June 1983',
    standing: 'published',
    use: 'positive connections; automatic cut-off for hoses over 1/2 in inside; nothing over its rated pressure; read in copies',
  },
  MineAirRule: {
    citation: '30 CFR 77.412 (compressed air systems)',
    standing: 'published',
    use: 'shut, bleed and prove zero before opening; restraints on hoses; a model, not binding here; read in a copy',
  },
  Cfr1926Noise: {
    citation: '29 CFR 1926.52, table D-2; NIOSH 98-126',
    standing: 'published',
    use: 'permissible hours by level at the ear; the table read in a copy, NIOSH from memory',
  },
  Cfr1926Silica: {
    citation: '29 CFR 1926.1153 (respirable crystalline silica)',
    standing: 'published',
    use: 'wet or shrouded cutting of pavement; from memory',
  },
  Cfr192: {
    citation: '49 CFR 192.325, 192.329(b), 192.376(b) (gas pipelines)',
    standing: 'published',
    use: '12 in to other structures (from memory); a weak link on plastic pulled through the ground (read)',
  },
  NewYork753: {
    citation: '16 NYCRR 753-3.6',
    standing: 'published',
    use: 'gas and liquid lines hand-dug before power equipment; read in a synopsis',
  },
  CrossBorePractices: {
    citation: 'Cross Bore Safety Association, Leading Practices (2019/2020)',
    standing: 'second hand',
    use: 'sewers and laterals looked at after the bore, before gas or service; read in a copy',
  },
  TenStatesStandards: {
    citation:
      'Recommended Standards for Water Works (Great Lakes–Upper Mississippi River Board), section 8.8',
    standing: 'second hand',
    use: '10 ft in plan, 18 in at crossings between water and sewer; clause number from memory, four codes agree',
  },
} as const satisfies Record<string, Source>
