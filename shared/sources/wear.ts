import type { Source } from './shape.ts'

export const wearSources = {
  ArchardLaw: {
    citation:
      'J. F. Archard, Contact and rubbing of flat surfaces, J. Appl. Phys. 24 (1953) 981; coefficients after E. Rabinowicz, Friction and Wear of Materials',
    standing: 'second hand',
    use: 'the law in both its conventions, which differ by a factor of 3; one coefficient and hardness of mild steel on itself, read in an encyclopedia',
  },
  MohsQuartzNote: {
    citation: 'Equivalent quartz content by Mohs hardness: public laboratory note on rock abrasiveness tests',
    standing: 'second hand',
    use: 'the factor of each half step of hardness; read in a copy. The mixture of the check is our own',
  },
  UsMintCoins: {
    citation: 'U.S. Mint, Coin Specifications (usmint.gov)',
    standing: 'published',
    use: 'thickness of the quarter, 1.75 mm; of cent, nickel and dime from memory',
  },
  WearIncrementsModel: {
    citation:
      'Wear as a drifting Brownian motion with a normal-inverse-gamma prior: conjugate update derived for this program',
    standing: 'our judgement',
    use: 'the forecast of a part; its worked example comes from exact fractions and from 4 million Monte Carlo draws, both independent of this code',
  },
  WeibullLikelihood: {
    citation:
      'W. Q. Meeker and L. A. Escobar, Statistical Methods for Reliability Data, Wiley 1998; shock absorber distances after P. D. T. O’Connor 1985',
    standing: 'second hand',
    use: 'greatest likelihood with lives cut short; estimates read in a public worked report',
  },
  NistReliability: {
    citation: 'NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3 and 8.4.5.2',
    standing: 'published',
    use: 'Weibull fit of ten failures among twenty units, and the power law of repairs; read',
  },
  LiebleinZelen: {
    citation:
      'J. Lieblein and M. Zelen, Statistical investigation of the fatigue life of deep-groove ball bearings, J. Res. NBS 57 (1956) 273; fit after J. F. Lawless 1982',
    standing: 'second hand',
    use: '23 complete lives of ball bearings; the fitted figures from memory',
  },
  MilHdbk189: {
    citation: 'MIL-HDBK-189 (1981), Reliability Growth Management, appendix C',
    standing: 'second hand',
    use: '27 failure times and what the power law makes of them, with more digits than the page prints, read in a public test suite',
  },
  AgeReplacement: {
    citation:
      'R. E. Barlow and F. Proschan, Mathematical Theory of Reliability, Wiley 1965: age replacement; optimum replacement time example of an online reliability text',
    standing: 'second hand',
    use: 'the condition of least cost; inputs of the example read, its optimum from memory and worked out again independently',
  },
  GraybillIyer: {
    citation:
      'F. A. Graybill and H. K. Iyer, Regression Analysis: Concepts and Applications, Duxbury 1994, pp. 119, 431–434',
    standing: 'second hand',
    use: 'when a line reaches a value, with its interval: thermostat, reaction chamber, crystal growth; read in copies',
  },
  InverseRegression: {
    citation:
      'B. M. Greenwell and C. M. Schubert Kabban, investr: an R package for inverse estimation, The R Journal 6/1 (2014) 90–100',
    standing: 'published',
    use: 'crystal growth to 8 g, printed with four decimals; read',
  },
} as const satisfies Record<string, Source>
