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
  crewPerHourMinorUnits: 29000,
  crewSize: 2,
  watcherPerHourMinorUnits: 6200,
  mobilisationMinorUnits: 15000,
  pitMinorUnits: 9000,
  shoringPerPitMinorUnits: 22000,
  potholeMinorUnits: 35000,
  permitMinorUnits: 20000,
  fuelPerLitreMinorUnits: 115,
  pipePerMetreMinorUnits: 900,
  wearPerMetreMinorUnits: 120,
  restorationMinorUnits: {
    lawn: 9000,
    walk: 45000,
    pavers: 30000,
    drive: 60000,
    slab: 60000,
    road: 60000,
    ditch: 6000,
    other: 9000,
  },
  wallEntryMinorUnits: 45000,
  openCutPerMetreMinorUnits: 24000,
  minimumCallOutMinorUnits: 90000,
  overheadFraction: 0.12,
  marginFraction: 0.18,
}
