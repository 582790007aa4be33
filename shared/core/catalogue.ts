import { airDensityRatio } from './air/air-density-ratio.ts'
import { airLossFirstOrder } from './air/air-loss-first-order.ts'
import { airLossHarris } from './air/air-loss-harris.ts'
import { airOperatingPoint } from './air/air-operating-point.ts'
import { componentLoss } from './air/component-loss.ts'
import { compressorDelivery } from './air/compressor-delivery.ts'
import { compressorFuel } from './air/compressor-fuel.ts'
import { compressorPower } from './air/compressor-power.ts'
import { condensateRate } from './air/condensate-rate.ts'
import { couplingLoss } from './air/coupling-loss.ts'
import { enginePower } from './air/engine-power.ts'
import { exhaustTemperature } from './air/exhaust-temperature.ts'
import { frictionFactor } from './air/friction-factor.ts'
import { hoseFrictionLoss } from './air/hose-friction-loss.ts'
import { hoseParting } from './air/hose-parting.ts'
import { orificeDischarge } from './air/orifice-discharge.ts'
import { receiverTime } from './air/receiver-time.ts'
import { saturatedVapour } from './air/saturated-vapour.ts'
import { standardAtmosphere } from './air/standard-atmosphere.ts'
import { valveFlow } from './air/valve-flow.ts'
import { burningLineDistance } from './digsafe/burning-line-distance.ts'
import { earliestStart } from './digsafe/earliest-start.ts'
import { hoseThrust } from './digsafe/hose-thrust.ts'
import { noiseDose } from './digsafe/noise-dose.ts'
import { noiseDuration } from './digsafe/noise-duration.ts'
import { pitSlope } from './digsafe/pit-slope.ts'
import { pitVolume } from './digsafe/pit-volume.ts'
import { positionTolerance } from './digsafe/position-tolerance.ts'
import { requiredClearance } from './digsafe/required-clearance.ts'
import { advanceRate } from './ground/advance-rate.ts'
import { anchorageLength } from './ground/anchorage-length.ts'
import { cavityExpansionFactors } from './ground/cavity-expansion-factors.ts'
import { cavityPressureDilatant } from './ground/cavity-pressure-dilatant.ts'
import { cavityPressureUndrained } from './ground/cavity-pressure-undrained.ts'
import { dcpResistance } from './ground/dcp-resistance.ts'
import { drivingResistance } from './ground/driving-resistance.ts'
import { groundDisplacement } from './ground/ground-displacement.ts'
import { heaveProgress } from './ground/heave-progress.ts'
import { impactEfficiency } from './ground/impact-efficiency.ts'
import { pileTipFactors } from './ground/pile-tip-factors.ts'
import { pipeCurvatureRatio } from './ground/pipe-curvature-ratio.ts'
import { rateLearning } from './ground/rate-learning.ts'
import { sandStrength } from './ground/sand-strength.ts'
import { setPerBlow } from './ground/set-per-blow.ts'
import { shaftFriction } from './ground/shaft-friction.ts'
import { sidewaysPush } from './ground/sideways-push.ts'
import { sptFineSand } from './ground/spt-fine-sand.ts'
import { sptFrictionAngle } from './ground/spt-friction-angle.ts'
import { sptStressCorrection } from './ground/spt-stress-correction.ts'
import { sptUndrainedStrength } from './ground/spt-undrained-strength.ts'
import { surfaceHeave } from './ground/surface-heave.ts'
import { tipResistanceClay } from './ground/tip-resistance-clay.ts'
import { tipResistanceGranular } from './ground/tip-resistance-granular.ts'
import { toolAtPressure } from './ground/tool-at-pressure.ts'
import { toolProportions } from './ground/tool-proportions.ts'
import { vibrationDistance } from './ground/vibration-distance.ts'
import { vibrationPpv } from './ground/vibration-ppv.ts'
import { vibrationPpvAttewellFarmer } from './ground/vibration-ppv-attewell-farmer.ts'
import { vibrationPpvCaltrans } from './ground/vibration-ppv-caltrans.ts'
import { contactChance } from './line/contact-chance.ts'
import { deviation } from './line/deviation.ts'
import { driftAllowance } from './line/drift-allowance.ts'
import { geodesicLength } from './line/geodesic.ts'
import { hitChance } from './line/hit-chance.ts'
import { observedDeviation } from './line/observed-deviation.ts'
import { annulusVolume } from './pipe/annulus-volume.ts'
import { bendRadius } from './pipe/bend-radius.ts'
import { bundleDiameter } from './pipe/bundle-diameter.ts'
import { dryDrag } from './pipe/dry-drag.ts'
import { oversizeRatio } from './pipe/oversize-ratio.ts'
import { pipeLeadIn } from './pipe/pipe-lead-in.ts'
import { pipeMass } from './pipe/pipe-mass.ts'
import { pipeSize } from './pipe/pipe-size.ts'
import { pullInLimit } from './pipe/pull-in-limit.ts'
import { pullStressLoad } from './pipe/pull-stress-load.ts'
import { thermalLengthChange } from './pipe/thermal-length-change.ts'
import type { AnyRelation } from './relation.ts'
import { ageReplacement } from './wear/age-replacement.ts'
import { archardWear } from './wear/archard-wear.ts'
import { coinFeeler } from './wear/coin-feeler.ts'
import { degradationForecast } from './wear/degradation-forecast.ts'
import { driftToLimit } from './wear/drift-to-limit.ts'
import { equivalentQuartz } from './wear/equivalent-quartz.ts'
import { repairTrend } from './wear/repair-trend.ts'
import { ringGapWear } from './wear/ring-gap-wear.ts'
import { weibullFit } from './wear/weibull-fit.ts'
import { weibullScale } from './wear/weibull-scale.ts'

/** Every relation, a line each. A test finds a relation file that is missing here. */
export const CATALOGUE: readonly AnyRelation[] = [
  airDensityRatio,
  airLossFirstOrder,
  airLossHarris,
  airOperatingPoint,
  componentLoss,
  compressorDelivery,
  compressorFuel,
  compressorPower,
  condensateRate,
  couplingLoss,
  enginePower,
  exhaustTemperature,
  frictionFactor,
  hoseFrictionLoss,
  hoseParting,
  orificeDischarge,
  receiverTime,
  saturatedVapour,
  standardAtmosphere,
  valveFlow,
  advanceRate,
  anchorageLength,
  cavityExpansionFactors,
  cavityPressureDilatant,
  cavityPressureUndrained,
  dcpResistance,
  drivingResistance,
  groundDisplacement,
  heaveProgress,
  impactEfficiency,
  pileTipFactors,
  pipeCurvatureRatio,
  rateLearning,
  sandStrength,
  setPerBlow,
  shaftFriction,
  sidewaysPush,
  sptFineSand,
  sptFrictionAngle,
  sptStressCorrection,
  sptUndrainedStrength,
  surfaceHeave,
  tipResistanceClay,
  tipResistanceGranular,
  toolAtPressure,
  toolProportions,
  vibrationDistance,
  vibrationPpvAttewellFarmer,
  vibrationPpvCaltrans,
  vibrationPpv,
  deviation,
  driftAllowance,
  observedDeviation,
  hitChance,
  contactChance,
  geodesicLength,
  pitVolume,
  pitSlope,
  requiredClearance,
  earliestStart,
  positionTolerance,
  noiseDuration,
  noiseDose,
  hoseThrust,
  burningLineDistance,
  annulusVolume,
  bendRadius,
  bundleDiameter,
  dryDrag,
  oversizeRatio,
  pipeLeadIn,
  pipeMass,
  pipeSize,
  pullInLimit,
  pullStressLoad,
  thermalLengthChange,
  archardWear,
  equivalentQuartz,
  ringGapWear,
  coinFeeler,
  degradationForecast,
  driftToLimit,
  weibullFit,
  weibullScale,
  ageReplacement,
  repairTrend,
]

export const findRelation = (id: string): AnyRelation | undefined => CATALOGUE.find((each) => each.id === id)
