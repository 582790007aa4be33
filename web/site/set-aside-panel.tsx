import { useEffect, useState } from 'preact/hooks'
import type { SignOffFile } from '../../shared/contracts/sign-off.ts'
import { plainCode } from '../../shared/text/by-system.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { Panel } from '../crossings/form/panel.tsx'
import { type SetAsideMonth, setAsideMonths } from './set-asides.ts'
import { fetchSigned } from './site-requests.ts'
import { SITE } from './site-words.ts'

const said = ({ by, setAside }: SignOffFile): string =>
  setAside === undefined ? '' : `${plainCode(setAside.code)}: ${by}, ${setAside.second}: ${setAside.reason}`

const row = ({ month, files }: SetAsideMonth) => ({
  key: month,
  cells: [month, String(files.length), files.map(said).join('; ')],
})

/** How often a rule was set aside, for whoever answers for it. */
export function SetAsidePanel() {
  const [months, setMonths] = useState<readonly SetAsideMonth[] | null>([])
  useEffect(() => {
    let isHere = true
    fetchSigned(null).then((listed) => {
      if (isHere) setMonths(listed === null ? null : setAsideMonths(listed.map((each) => each.file)))
    })
    return () => {
      isHere = false
    }
  }, [])
  const empty = months === null ? SITE.asideUnheard : SITE.asideNever
  return (
    <Panel id="set-aside" heading={SITE.asideMonths}>
      <p class="fine">{SITE.asideMonthsHint}</p>
      {months === null || months.length === 0 ? (
        <p>{empty}</p>
      ) : (
        <DataTable caption={SITE.asideMonths} columns={SITE.asideColumns} rows={months.map(row)} />
      )}
    </Panel>
  )
}
