import { relation } from '../relation.ts'
import { expansionRatio, pressureOfRatio } from './dilatant-limit.ts'

const DEGREE_RAD = Math.PI / 180

/**
 * Limit pressure of a cavity in a soil with friction, cohesion and constant dilation, finite strain, Pa, and the ratio c/a of
 * plastic radius to cavity radius. α = (1+sin φ)/(1−sin φ), β the same of ψ, m = 1 cylinder or 2 sphere; the full symbols are in
 * dilatant-limit.ts. Series and root are carried to 1e-13; the model itself keeps ψ constant, so that it is high in dense sand.
 * Yu & Houlsby 1991.
 */
export const cavityPressureDilatant = relation({
  id: 'cavity-pressure-dilatant',
  title: 'Cavity limit pressure, soil with friction and dilation',
  formula:
    'Σ ξⁿ/n! (R^(n−γ) − 1)/(n−γ) = (η/γ)(1−δ)^((β+m)/β); p = {R α(1+m)[Y+(α−1)p0]/(m+α) − Y}/(α−1); c/a = R^(α/(m(α−1)))',
  sources: ['YuHoulsby1991'],
  inputs: {
    frictionAngle: {
      kind: 'angle',
      words: 'friction angle',
      range: {
        min: 5 * DEGREE_RAD,
        max: 50 * DEGREE_RAD,
        hardMin: 0.25 * DEGREE_RAD,
        hardMax: 60 * DEGREE_RAD,
      },
    },
    dilationAngle: {
      kind: 'angle',
      words: 'dilation angle',
      range: {
        min: -10 * DEGREE_RAD,
        max: 25 * DEGREE_RAD,
        hardMin: -30 * DEGREE_RAD,
        hardMax: 45 * DEGREE_RAD,
      },
    },
    cohesion: { kind: 'stress', words: 'cohesion', range: { min: 0, max: 100e3, hardMin: 0 } },
    youngsModulus: {
      kind: 'stress',
      words: "Young's modulus",
      range: { min: 1e6, max: 300e6, hardMin: 1e4 },
    },
    poissonRatio: {
      kind: 'ratio',
      words: "Poisson's ratio",
      range: { min: 0.1, max: 0.499, hardMin: 0, hardMax: 0.5 },
    },
    insituStress: {
      kind: 'stress',
      words: 'mean stress in the ground',
      range: { min: 1e3, max: 200e3, hardMin: 1 },
    },
    shape: { choices: ['cylinder', 'sphere'], words: 'shape of the cavity' },
  },
  outputs: {
    limitPressure: { kind: 'stress', words: 'limit pressure' },
    plasticRadiusRatio: { kind: 'ratio', words: 'plastic radius over cavity radius' },
  },
  fn: (given) => {
    const m = given.shape === 'sphere' ? 2 : 1
    const { frictionAngleRad, dilationAngleRad, cohesionPa, youngsModulusPa, poissonRatio, insituStressPa } =
      given
    const ratio = expansionRatio(
      frictionAngleRad,
      dilationAngleRad,
      cohesionPa,
      youngsModulusPa,
      poissonRatio,
      insituStressPa,
      m,
    )
    const alpha = (1 + Math.sin(frictionAngleRad)) / (1 - Math.sin(frictionAngleRad))
    return {
      limitPressurePa: pressureOfRatio(ratio, frictionAngleRad, cohesionPa, insituStressPa, m),
      plasticRadiusRatio: ratio ** (alpha / (m * (alpha - 1))),
    }
  },
  checks: ['ground-cavity'],
  remarks:
    'No worked example is known to be printed; held against an independent integration of the similarity equation (0.1 %) and against the undrained limit.',
})
