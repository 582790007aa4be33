/** Of the numbers, not of the program: rises with every change in a figure a user could have written down. */
export const ENGINE_VERSION = '0.3.1'

/** The month the tables of soils, pipes and rules were last checked. */
export const TABLES_VERSION = '2026-11'
