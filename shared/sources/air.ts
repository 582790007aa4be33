import type { Source } from './shape.ts'

export const airSources = {
  UsStandardAtmosphere1976: {
    citation: 'NOAA, NASA, USAF: U.S. Standard Atmosphere, 1976. NOAA-S/T 76-1562, Washington, D.C., 1976',
    standing: 'published',
    use: 'constants and formula of the lowest layer, Sutherland’s viscosity; printed values by geometric altitude at 0, 2, 4, 6, 8 and 10 km, read in a copy of the 2 km table held in an open library’s tests',
  },
  UsStandardAtmosphere1976Recalled: {
    citation: 'NOAA, NASA, USAF: U.S. Standard Atmosphere, 1976, Table I',
    standing: 'second hand',
    use: 'printed values at 500, 1000, 1500 and 3000 m, from memory',
  },
  Colebrook1939: {
    citation:
      'C. F. Colebrook: Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws. Journal of the Institution of Civil Engineers 11, 1939, 133–156',
    standing: 'published',
    use: 'friction factor of turbulent flow; formula as every hydraulics text has it',
  },
  Serghides1984: {
    citation:
      'T. K. Serghides: Estimate friction factor accurately. Chemical Engineering 91 (5), 1984, 63–64',
    standing: 'published',
    use: 'explicit friction factor, three-logarithm form; checked against an open library',
  },
  Haaland1983: {
    citation:
      'S. E. Haaland: Simple and explicit formulas for the friction factor in turbulent pipe flow. Journal of Fluids Engineering 105, 1983, 89–90',
    standing: 'published',
    use: 'explicit friction factor; checked against an open library',
  },
  SwameeJain1976: {
    citation:
      'P. K. Swamee, A. K. Jain: Explicit equations for pipe-flow problems. Journal of the Hydraulics Division 102 (5), 1976, 657–664',
    standing: 'published',
    use: 'explicit friction factor; checked against an open library',
  },
  Churchill1977: {
    citation:
      'S. W. Churchill: Friction-factor equation spans all fluid-flow regimes. Chemical Engineering 84 (24), 1977, 91–92',
    standing: 'published',
    use: 'friction factor of every regime in one curve; checked against an open library',
  },
  OpenLibraryFluids: {
    citation:
      'fluids, an open (MIT) library of fluid dynamics for Python: test suite and solved examples, commit 091070e',
    standing: 'published',
    use: 'friction factors, isothermal flow and choke pressure to all digits; Crane’s example solved anew; read',
  },
  CengelCimbala: {
    citation:
      'Y. A. Çengel, J. M. Cimbala: Fluid Mechanics, Fundamentals and Applications, Examples 8-3 and 8-4',
    standing: 'second hand',
    use: 'friction factors to three digits; inputs read in an open companion, answers from memory',
  },
  CraneTp410: {
    citation: 'Crane Co.: Flow of Fluids through Valves, Fittings, and Pipe. Technical Paper 410',
    standing: 'published',
    use: 'isothermal flow with the log term; Examples 7-16 and 7-22, answers read in an open library’s copy',
  },
  CraneAirTable: {
    citation:
      'Crane Co.: Technical Paper 410, Flow of Air Through Schedule 40 Steel Pipe; reprinted as Table B8.14',
    standing: 'published',
    use: 'losses in psi per 100 ft at 100 psi and 60 °F, read in a copy as running text, columns put back by hand',
  },
  HoseGuide: {
    citation: 'Fluid flow and pressure loss through hose, a trade hose guide',
    standing: 'common practice',
    use: 'a restrictive coupling costs 5 % of the loss of 100 ft of its hose; read in a copy',
  },
  OrificeTable: {
    citation:
      'Discharge of air through an orifice, cubic feet of free air per minute: the table of the compressed-air and machinery handbooks',
    standing: 'published',
    use: 'free air by hole and pressure, coefficient 1.0, 70 °F; read in a copy',
  },
  OrnlReceiverTests: {
    citation:
      'Oak Ridge National Laboratory for the U.S. Department of Energy: MEASUR Tools Suite, unit tests of receiver sizing, commit 9c294ae',
    standing: 'published',
    use: 'five receiver sizes with their times, to all digits; read',
  },
  UsbrAltitudeTable: {
    citation:
      'U.S. Bureau of Reclamation: Design Guide for Heating, Ventilating and Air Conditioning Systems, 2006, Table 6a',
    standing: 'published',
    use: 'relative density and specific volume of 70 °F air, 5900 to 8700 ft; read in a copy',
  },
  TemperatureAltitudeRow: {
    citation: 'Altitude and temperature effect in CFM, a table for percussive hammers, author not named',
    standing: 'second hand',
    use: 'volume factor at −40 °F, sea level to 15 000 ft; read in a copy',
  },
  Fm5434: {
    citation: 'Headquarters, Department of the Army: FM 5-434, Earthmoving Operations, 2000, Table 9-1',
    standing: 'published',
    use: 'volumetric efficiency of rotary compressors at altitude; read in a copy as running text, columns put back by hand',
  },
  Iso6358: {
    citation:
      'ISO 6358: Pneumatic fluid power, determination of flow-rate characteristics of components using compressible fluids',
    standing: 'published',
    use: 'flow through an oiler from conductance C and critical ratio b; formula from memory, checked against a worked model read in a copy',
  },
  EspositoFluidPower: {
    citation: 'A. Esposito: Fluid Power with Applications, Examples 13-7 to 13-11 and 14-1',
    standing: 'second hand',
    use: 'receiver, power, condensate, valve and pipe examples; inputs and method read in an open companion code, answers as that method gives them',
  },
  AshraeFundamentals: {
    citation: 'ASHRAE Handbook, Fundamentals: Psychrometrics (Hyland and Wexler’s saturation pressure)',
    standing: 'published',
    use: 'coefficients of the saturation pressure, from memory; an open library agrees at 20 °C to all its digits',
  },
  OpenLibraryPsychro: {
    citation: 'psychrolib 1.1.1, an open (MIT) library of psychrometrics',
    standing: 'published',
    use: 'saturation pressures from −20 to 45 °C, as that library computes them; apart from this program',
  },
  EngineDerateRule: {
    citation:
      'Agricultural engineering text: 3 % of power per 1000 ft above 500 ft without a turbocharger, none with one to its rated altitude',
    standing: 'published',
    use: 'engine power at altitude; rule and its example read in a copy, the answer by the rule',
  },
  Cfr431: {
    citation: '10 CFR 431.345, Table 1: package isentropic efficiency of lubricated rotary compressors',
    standing: 'published',
    use: 'efficiency of compression by delivery; read. It is of stationary packages: divided by 0.92 for the motor, our judgement',
  },
  UsaceEquipment: {
    citation:
      'U.S. Army Corps of Engineers: EP 1110-1-8, Construction Equipment Ownership and Operating Expense, chapter 2',
    standing: 'published',
    use: 'diesel 0.36 lb per bhp·h at 7 lb/gal; read in a copy whose label was lost, taken as diesel',
  },
  GasDynamics: {
    citation: 'Thrust of a choked convergent nozzle: any text of gas dynamics, e.g. A. H. Shapiro 1953',
    standing: 'published',
    use: 'thrust of a parted hose; formula from memory',
  },
  AirSecondCalculation: {
    citation:
      'Hose losses and operating points from a second program, written apart from this one on the same published formulas',
    standing: 'our judgement',
    use: 'values no publication has: shows that two programs agree, not that the model is right',
  },
} as const satisfies Record<string, Source>
