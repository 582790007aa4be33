import type { RateBook } from '../core/plan/crossing-input.ts'

/**
 * An invented rate book for the demo and for trying things out: nobody's prices.
 * Sized inside the bands that are common practice, no source (US, 2026): crew with iron 270–330 an hour,
 * pothole 250–600, road permit 75–500, walk panel 400–900, blacktop patch from 600, lawn 75–200, call-out 700–1,200.
 */
export const EXAMPLE_RATE_BOOK: RateBook = {
  name: 'Example book (invented)',
  invented: true,
  currency: 'USD',
  quoteStepMinorUnits: 1000,
  crewPerHourMinorUnits: 27000,
  crewSize: 2,
  watcherPerHourMinorUnits: 6200,
  mobilisationMinorUnits: 5000,
  pitMinorUnits: 1200,
  shoringPerPitMinorUnits: 22000,
  potholeMinorUnits: 35000,
  permitMinorUnits: 35000,
  fuelPerLitreMinorUnits: 115,
  pipePerMetreMinorUnits: 400,
  wearPerMetreMinorUnits: 120,
  restorationMinorUnits: {
    lawn: 2200,
    walk: 45000,
    pavers: 30000,
    drive: 60000,
    slab: 60000,
    road: 60000,
    ditch: 3000,
    other: 2200,
  },
  wallEntryMinorUnits: 45000,
  openCutPerMetreMinorUnits: 24000,
  minimumCallOutMinorUnits: 90000,
  overheadFraction: 0.04,
  marginFraction: 0.1,
}
