import type { Source } from './shape.ts'

export const groundSources = {
  GibsonAnderson1961: {
    citation:
      'Gibson, R. E. and Anderson, W. F. (1961), In situ measurement of soil properties with the pressuremeter, Civil Engineering and Public Works Review 56, 615–618',
    standing: 'published',
    use: 'limit pressure of a cylinder in undrained soil, p0 + su(1 + ln Ir); from memory, derived again from equilibrium',
  },
  BishopHillMott1945: {
    citation:
      'Bishop, R. F., Hill, R. and Mott, N. F. (1945), The theory of indentation and hardness tests, Proceedings of the Physical Society 57, 147–159',
    standing: 'published',
    use: 'limit pressure of a sphere in undrained soil, p0 + (4/3)su(1 + ln Ir); from memory, derived again from equilibrium',
  },
  YuHoulsby1991: {
    citation:
      'Yu, H. S. and Houlsby, G. T. (1991), Finite cavity expansion in dilatant soils: loading analysis, Géotechnique 41(2), 173–183',
    standing: 'published',
    use: 'limit pressure of cylinder and sphere with friction, cohesion and dilation; from memory, confirmed by an independent integration of the similarity equation to 0.1 %',
  },
  Vesic1972: {
    citation:
      'Vesic, A. S. (1972), Expansion of cavities in infinite soil mass, Journal of the Soil Mechanics and Foundations Division ASCE 98(SM3), 265–290',
    standing: 'published',
    use: 'expansion factors of cylinder and sphere; from memory, formula derived again; the printed table rounds to two decimals',
  },
  Vesic1977: {
    citation: 'Vesic, A. S. (1977), Design of pile foundations, NCHRP Synthesis of Highway Practice 42',
    standing: 'published',
    use: 'bearing factors of a pile tip; table as reprinted in textbooks, from memory; the formula gives the printed values',
  },
  Sagaseta1987: {
    citation:
      'Sagaseta, C. (1987), Analysis of undrained soil deformation due to ground loss, Géotechnique 37(3), 301–320',
    standing: 'published',
    use: 'movement round a line source below a free surface, sign reversed for an inserted volume; from memory, checked against equilibrium and the free surface',
  },
  VerruijtBooker1996: {
    citation:
      'Verruijt, A. and Booker, J. R. (1996), Surface settlements due to deformation of a tunnel in an elastic half plane, Géotechnique 46(4), 753–756',
    standing: 'published',
    use: 'the same for any Poisson ratio (its ground-loss term); from memory, checked against equilibrium and the free surface',
  },
  TerzaghiPeck: {
    citation:
      'Terzaghi, K. and Peck, R. B. (1967), Soil Mechanics in Engineering Practice, 2nd ed., Wiley: N, consistency and unconfined strength of clay',
    standing: 'second hand',
    use: 'band limits N 2/4/8/15/30 and unconfined strength; read in a public-works handbook and in the Caltrans shoring manual',
  },
  PeckHansonThornburn1974: {
    citation:
      'Peck, R. B., Hanson, W. E. and Thornburn, T. H. (1974), Foundation Engineering, 2nd ed., Wiley',
    standing: 'second hand',
    use: 'friction angle 29/30/36/41 degrees at N 4/10/30/50; read in a public-works handbook',
  },
  Meyerhof1956: {
    citation:
      'Meyerhof, G. G. (1956), Penetration tests and bearing capacity of cohesionless soils, Journal of the Soil Mechanics and Foundations Division ASCE 82(SM1)',
    standing: 'second hand',
    use: 'friction angle 30/35/40/45 degrees at N 4/10/30/50; read in a summary',
  },
  Stroud1974: {
    citation:
      'Stroud, M. A. (1974), The standard penetration test in insensitive clays and soft rocks, Proceedings ESOPT 1, Stockholm, 367–375',
    standing: 'second hand',
    use: 'su = f1 N, f1 4–5 kPa at medium plasticity and 6–7 kPa below a plasticity index of 20; read in a summary',
  },
  Hara1974: {
    citation:
      'Hara, A., Ohta, T., Niwa, M., Tanaka, S. and Banno, T. (1974), Shear modulus and shear strength of cohesive soils, Soils and Foundations 14(3), 1–12',
    standing: 'second hand',
    use: 'su = 29 N^0.72 kPa, an upper bound; from memory (a page that prints the exponent 0.27 has a slip)',
  },
  Ufc322010: {
    citation: 'UFC 3-220-10, Soil Mechanics (DM 7.1), 2022, chapter 8',
    standing: 'second hand',
    use: 'Wolff (eq. 8-5), Kulhawy and Mayne (eq. 8-4), Hatanaka and Uchida, fine saturated sand (eq. 8-1), cone factor Nk 10–19; read in a transcription',
  },
  ShioiFukui1982: {
    citation:
      'Shioi, Y. and Fukui, J. (1982), Application of N-value to design of foundations in Japan, Proceedings ESOPT 2, Amsterdam, 159–164',
    standing: 'second hand',
    use: 'friction angle from N, root and straight form; read in a summary',
  },
  LiaoWhitman1986: {
    citation:
      'Liao, S. S. C. and Whitman, R. V. (1986), Overburden correction factors for SPT in sand, Journal of Geotechnical Engineering ASCE 112(3), 373–377',
    standing: 'published',
    use: 'CN = sqrt(pa / effective vertical stress), capped at 2.0 at shallow depth; from memory',
  },
  Bolton1986: {
    citation: 'Bolton, M. D. (1986), The strength and dilatancy of sands, Géotechnique 36(1), 65–78',
    standing: 'published',
    use: 'friction and dilation angle from relative density and mean stress; from memory',
  },
  HardinModulus: {
    citation:
      'Hardin, B. O. (1978), The nature of stress–strain behavior for soils, Proceedings ASCE Specialty Conference on Earthquake Engineering and Soil Dynamics, 3–90',
    standing: 'published',
    use: 'small-strain modulus Gmax = 625 sqrt(pa p0)/(0.3 + 0.7 e^2) kPa; from memory',
  },
  Em111022504: {
    citation: 'US Army Corps of Engineers, EM 1110-2-2504, Design of Sheet Pile Walls, 1994, Table 3-1',
    standing: 'published',
    use: 'relative density, N, friction angle and unit weight of granular soil (after Teng 1962); read',
  },
  CaltransShoring: {
    citation: 'Caltrans, Trenching and Shoring Manual, 2011 (rev. 2025), Tables 3-1 to 3-3',
    standing: 'second hand',
    use: 'unit weights, N bands and strengths; read in a transcription',
  },
  Uscs: {
    citation: 'ASTM D2487, Standard Practice for Classification of Soils for Engineering Purposes',
    standing: 'published',
    use: 'group symbols',
  },
  AstmD6951: {
    citation:
      'ASTM D6951, Standard Test Method for Use of the Dynamic Cone Penetrometer in Shallow Pavement Applications',
    standing: 'published',
    use: 'hammer 8 kg, drop 575 mm, cone 20 mm; CBR = 292 / DPI^1.12 (US Army Corps of Engineers); from memory',
  },
  Hiley1925: {
    citation:
      'Hiley, A. (1925), A rational pile-driving formula and its application in piling practice explained, Engineering 119, 657–658',
    standing: 'published',
    use: 'share of the kinetic energy kept in an impact with restitution; the closed form follows from momentum balance',
  },
  Trl429: {
    citation:
      'Hiller, D. M. and Crabb, G. I. (2000), Groundborne vibration caused by mechanised construction works, TRL Report 429, eq. 19; also BS 5228-2',
    standing: 'published',
    use: 'v = kp sqrt(W)/r^1.3 for percussive piling, mm/s, J, m; read. Carried over from piles of 1.5–85 kJ: an order of magnitude below 1 m',
  },
  AttewellFarmer1973: {
    citation:
      'Attewell, P. B. and Farmer, I. W. (1973), Attenuation of ground vibrations from pile driving, Ground Engineering 6(4), 26–29',
    standing: 'published',
    use: 'v = 1.5 sqrt(W)/r, mm/s, J, m; from memory',
  },
  CaltransVibration2013: {
    citation: 'Caltrans, Transportation and Construction Vibration Guidance Manual, 2013',
    standing: 'published',
    use: '0.65 in/s at 25 ft for 36,000 ft-lb, (25/D)^n; from memory',
  },
  Fta2018: {
    citation:
      'Federal Transit Administration, Transit Noise and Vibration Impact Assessment Manual, 2018, eq. 7-2',
    standing: 'published',
    use: 'PPV = PPVref (25/D)^1.5; read in a copy; a county vibration sheet prints the distances 11, 10 and 1 ft',
  },
  SecondCalculation: {
    citation:
      'A second calculation of the same formula, written apart in another language (Python with NumPy)',
    standing: 'our judgement',
    use: 'holds our arithmetic where nobody has printed a number; says nothing about nature',
  },
  PenetrationModel: {
    citation:
      'Penetration model of Underlane: cavity pressure times a calibrated tip factor, shaft friction, one rate factor, set by an energy balance',
    standing: 'our judgement',
    use: 'calibrated on published cone factors and on the bands the trade remembers; plausible, not validated in the field',
  },
  MolingClassAverages: {
    citation: 'Averages of piercing tools by body size, from memory, ±30–40 %; no maker’s data',
    standing: 'our judgement',
    use: 'proportions of a tool whose data sheet is not at hand',
  },
  RateLearningModel: {
    citation:
      'ln(observed/planned) of past bores as normal with a normal prior, stalls as censored by matched moments: derived for this program',
    standing: 'our judgement',
    use: 'rate multiplier from your own footage; checked by hand for readings and against integration on a grid for stalls, both independent of this code',
  },
  SoilRanges: {
    citation:
      'Typical soil states by USCS group and N band, drawn from EM 1110-2-2504, Caltrans Tables 3-1 to 3-3, Terzaghi & Peck and UFC 3-220-10, with group offsets by judgement',
    standing: 'our judgement',
    use: 'unit weight, strength, dilation, volume factor and abrasivity of the groups that have no row of their own',
  },
} as const satisfies Record<string, Source>
