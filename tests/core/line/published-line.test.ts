import { describe, it } from 'vitest'
import { contactChance } from '../../../shared/core/line/contact-chance.ts'
import { deviation } from '../../../shared/core/line/deviation.ts'
import { driftAllowance } from '../../../shared/core/line/drift-allowance.ts'
import { geodesicLength } from '../../../shared/core/line/geodesic.ts'
import { hitChance } from '../../../shared/core/line/hit-chance.ts'
import { observedDeviation } from '../../../shared/core/line/observed-deviation.ts'
import { checks as contact } from '../../../shared/published/contact.ts'
import { checks as wander } from '../../../shared/published/deviation.ts'
import { checks as geodesic } from '../../../shared/published/geodesic.ts'
import { expectPrinted, expectTight } from './hold-against-print.ts'

const ALL = [...wander, ...contact, ...geodesic]

describe.each([deviation, driftAllowance, observedDeviation, contactChance, hitChance, geodesicLength])(
  '$id',
  (found) => {
    const own = ALL.filter((check) => check.relation === found.id)
    it.each(own)('prints $name', (check) => expectPrinted(found, check))
    it('would notice two per cent', () => expectTight(found, own))
  },
)
