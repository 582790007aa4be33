import { describe, it } from 'vitest'
import { annulusVolume } from '../../../shared/core/pipe/annulus-volume.ts'
import { bendRadius } from '../../../shared/core/pipe/bend-radius.ts'
import { bundleDiameter } from '../../../shared/core/pipe/bundle-diameter.ts'
import { dryDrag } from '../../../shared/core/pipe/dry-drag.ts'
import { oversizeRatio } from '../../../shared/core/pipe/oversize-ratio.ts'
import { pipeLeadIn } from '../../../shared/core/pipe/pipe-lead-in.ts'
import { pipeMass } from '../../../shared/core/pipe/pipe-mass.ts'
import { pipeSize } from '../../../shared/core/pipe/pipe-size.ts'
import { pullInLimit } from '../../../shared/core/pipe/pull-in-limit.ts'
import { pullStressLoad } from '../../../shared/core/pipe/pull-stress-load.ts'
import { thermalLengthChange } from '../../../shared/core/pipe/thermal-length-change.ts'
import { checks as handling } from '../../../shared/published/pipe-handling.ts'
import { checks as sizes } from '../../../shared/published/pipe-sizes.ts'
import { checks as loads } from '../../../shared/published/pull-loads.ts'
import { expectPrinted, expectTight } from '../line/hold-against-print.ts'

const ALL = [...handling, ...sizes, ...loads]

describe.each([
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
])('$id', (found) => {
  const own = ALL.filter((check) => check.relation === found.id)
  it.each(own)('prints $name', (check) => expectPrinted(found, check))
  it('would notice two per cent', () => expectTight(found, own))
})
