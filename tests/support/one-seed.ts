import fc from 'fast-check'

/** Every property runs on the same examples everywhere; another seed is a choice, and is printed with what failed. */
const SEED = Number(process.env.UNDERLANE_SEED ?? 20261124)

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: SEED })
