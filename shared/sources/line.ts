import type { Source } from './shape.ts'

export const lineSources = {
  DeviationModel: {
    citation:
      'Aiming error with a random walk of the heading, fitted to the trade’s one and two per cent of length: derived for this program',
    standing: 'our judgement',
    use: 'standard deviation of the path, allowance, effect of a sighting; worked figures come from a calculation independent of this code',
  },
  ContactModel: {
    citation: 'Gap between two axes as a normal variable: derived for this program',
    standing: 'our judgement',
    use: 'chance of contact and chance of arriving in a window; worked figures come from a calculation independent of this code',
  },
  Gda94Manual: {
    citation:
      'Intergovernmental Committee on Surveying and Mapping (Australia), Geocentric Datum of Australia Technical Manual: test line Flinders Peak to Buninyong',
    standing: 'published',
    use: 'ellipsoidal distance and azimuths (read in copies). On WGS84 instead of GRS80 the line differs by 0.07 micrometre',
  },
  KarneyGeodesic: {
    citation:
      'C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43–55; package geographiclib-geodesic 2.2.0 (MIT)',
    standing: 'published',
    use: 'the geodesic itself; worked values of the package’s own documentation and of its test set GeodTest (read)',
  },
  NormalAlgorithms: {
    citation:
      'W. J. Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969); M. J. Wichura, Algorithm AS 241, Applied Statistics 37 (1988)',
    standing: 'published',
    use: 'normal law and its inverse; coefficients from memory, held against an independent library',
  },
} as const satisfies Record<string, Source>
