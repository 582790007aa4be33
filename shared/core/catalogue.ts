import { airDensityRatio } from './air/air-density-ratio.ts'
import { airLossFirstOrder } from './air/air-loss-first-order.ts'
import { airOperatingPoint } from './air/air-operating-point.ts'
import { compressorDelivery } from './air/compressor-delivery.ts'
import { frictionFactor } from './air/friction-factor.ts'
import { hoseFrictionLoss } from './air/hose-friction-loss.ts'
import { orificeDischarge } from './air/orifice-discharge.ts'
import { receiverTime } from './air/receiver-time.ts'
import { standardAtmosphere } from './air/standard-atmosphere.ts'
import { pitSlope } from './digsafe/pit-slope.ts'
import { pitVolume } from './digsafe/pit-volume.ts'
import { requiredClearance } from './digsafe/required-clearance.ts'
import { contactChance } from './line/contact-chance.ts'
import { deviation } from './line/deviation.ts'
import { driftAllowance } from './line/drift-allowance.ts'
import { geodesicLength } from './line/geodesic.ts'
import { hitChance } from './line/hit-chance.ts'
import { observedDeviation } from './line/observed-deviation.ts'
import type { AnyRelation } from './relation.ts'

/** Every relation, a line each. A test finds a relation file that is missing here. */
export const CATALOGUE: readonly AnyRelation[] = [
  airDensityRatio,
  airLossFirstOrder,
  airOperatingPoint,
  compressorDelivery,
  frictionFactor,
  hoseFrictionLoss,
  orificeDischarge,
  receiverTime,
  standardAtmosphere,
  deviation,
  driftAllowance,
  observedDeviation,
  hitChance,
  contactChance,
  geodesicLength,
  pitVolume,
  pitSlope,
  requiredClearance,
]

export const findRelation = (id: string): AnyRelation | undefined => CATALOGUE.find((each) => each.id === id)
