import type { Source } from './shape.ts'

export const pipeSources = {
  AstmD3035: {
    citation: 'ASTM D3035 and F714; AWWA C901 and C906: polyethylene pipe, iron pipe size',
    standing: 'second hand',
    use: 'outside diameters read in copies; least walls computed as diameter over ratio to 0.001 in, floor 0.062 in from memory',
  },
  AstmD2513: {
    citation: 'ASTM D2513; 49 CFR 192.121 and 192.321: polyethylene gas pipe and tubing',
    standing: 'second hand',
    use: 'sizes and the walls 0.090 and 0.099 in read in a data sheet of a common grade; other walls computed',
  },
  AstmD2737: {
    citation: 'ASTM D2737: polyethylene tubing, copper tube size',
    standing: 'second hand',
    use: 'outside diameter rule and row read in copies; walls computed',
  },
  AstmF876: {
    citation: 'ASTM F876; AWWA C904: PEX tubing SDR 9',
    standing: 'second hand',
    use: '3/8 to 1 in read in a copy; larger computed',
  },
  AstmB88: {
    citation: 'ASTM B88: seamless copper water tube, types K and L',
    standing: 'second hand',
    use: 'sizes and weights read in two agreeing copies of the table; two other pages disagree and are wrong',
  },
  AstmB88M: {
    citation: 'ASTM B88M: seamless copper water tube, metric',
    standing: 'second hand',
    use: 'one copy of the table',
  },
  Iso4427: {
    citation: 'ISO 4427-2:2007; EN 12201-2: polyethylene pipe, metric',
    standing: 'second hand',
    use: 'least walls read in two copies; two misprints resolved by the rule of ISO 4065',
  },
  AwwaC906: {
    citation: 'ASTM F714; AWWA C906: polyethylene pipe, ductile iron pipe size',
    standing: 'second hand',
    use: 'outside diameters read in a copy; walls computed',
  },
  AstmD1785: {
    citation: 'ASTM D1785 (Schedules 40 and 80) and D2241 (SDR 21 and 26): PVC pressure pipe',
    standing: 'second hand',
    use: 'schedule walls read in two agreeing copies; ratio walls computed',
  },
  AsmeB3610: {
    citation: 'ASME B36.10M: welded and seamless wrought steel pipe',
    standing: 'second hand',
    use: 'outside diameters read; walls cross-checked against conduit tables, 12 in from memory',
  },
  Ul651: {
    citation: 'UL 651; NEMA TC 2: rigid PVC conduit',
    standing: 'second hand',
    use: 'outside diameters by its scope; walls from memory',
  },
  AstmF2160: {
    citation: 'ASTM F2160; NEMA TC 7; UL 651A: polyethylene conduit',
    standing: 'second hand',
    use: 'SDR 13.5 and schedule walls read on data pages; SDR 11 computed',
  },
  SteelConduit: {
    citation: 'ANSI C80.1, C80.3 and C80.6; UL 6, 797 and 1242: steel conduit',
    standing: 'second hand',
    use: 'EMT outside diameters read in two copies; IMC from memory',
  },
  En50411: {
    citation: 'EN 50411-6-1; IEC 60794-5: microducts',
    standing: 'second hand',
    use: 'some pairs read in trade articles and data sheets, the others from memory',
  },
  Din16874: {
    citation: 'DIN 16874 and 16876: polyethylene cable ducts',
    standing: 'second hand',
    use: 'sizes read in a trade article; no walls',
  },
  AstmD3034: {
    citation: 'ASTM D3034: PVC sewer pipe, SDR 35',
    standing: 'second hand',
    use: '4 and 6 in, from memory',
  },
  PipeMisprints: {
    citation: 'Tables on the web that are wrong for the standard they name',
    standing: 'second hand',
    use: 'negatives: copper L walls printed as K, ISO misprints, walls taken as diameter over ratio, rigid conduit bores printed for EMT',
  },
  AstmF1804: {
    citation: 'ASTM F1804: allowable tensile load for polyethylene gas pipe during pull-in',
    standing: 'second hand',
    use: 'form of the equation, its factors and the yield 2,600 psi from memory; yields 3,200 and 3,500 psi read; worked loads come from a calculation independent of this code',
  },
  PpiHandbook: {
    citation:
      'Plastics Pipe Institute, Handbook of Polyethylene Pipe: safe pull stress and least bend radius tables',
    standing: 'second hand',
    use: 'read in a reprint; worked radii and loads come from a calculation independent of this code',
  },
  DuctPullLoads: {
    citation: 'A published table of 12-hour pull loads of polyethylene duct on a 1,100 psi basis',
    standing: 'second hand',
    use: 'rows that agree with their own basis; its 1, 2-1/2 and 5 in rows do not and are left out',
  },
  DuctPullLoadsHigh: {
    citation: 'Duct pages that list 2 in SDR 13.5 at 2,580 lb',
    standing: 'second hand',
    use: 'a negative: nearly twice the stress the handbook allows',
  },
  Najafi2010: {
    citation:
      'M. Najafi, Trenchless Technology Piping: Installation and Inspection, McGraw-Hill and ASCE, 2010',
    standing: 'second hand',
    use: 'pull loads of 12 in DR 17 (agrees) and 4 in DR 11 (6 % high, a negative), read on single pages',
  },
  IsttImpactMoling: {
    citation: 'International Society for Trenchless Technology, guideline on impact moling',
    standing: 'published',
    use: 'bore 15 to 25 % larger than the product pipe (read); worked sizes by hand',
  },
  PipeArithmetic: {
    citation: 'Arithmetic of pipes in bores: annulus, weight, drag, lead-in, expansion',
    standing: 'our judgement',
    use: 'worked figures from a calculation independent of this code; the physics is elementary, the friction 0.5 is from memory',
  },
  PolyethyleneExpansion: {
    citation:
      'Thermal expansion of polyethylene: 9.0e-5 per °F in pipe design texts, 1.8e-4 per K for PE 100',
    standing: 'second hand',
    use: 'coefficients read; sources run from 8e-5 to 1.2e-4 per °F; worked changes by hand',
  },
  CirclePackings: {
    citation:
      'R. L. Graham, B. D. Lubachevsky, K. J. Nurmela, P. R. J. Östergård, Dense packings of congruent circles in a circle, Discrete Mathematics 181 (1998)',
    standing: 'published',
    use: 'smallest circle around n equal circles, ratios from memory; 2, 3 and 4 by hand',
  },
} as const satisfies Record<string, Source>
