import { deviceList } from '../../shared/contracts/access.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { whenWords } from '../saved/when.ts'
import { askAccess, DONE } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { useFetchedList } from './fetched-list.ts'

/** Every device one is signed in on, each with its way out. */
export function DevicesPanel() {
  const { items, again } = useFetchedList('/api/session/devices', deviceList)
  const end = async (id: string) => {
    await askAccess('DELETE', `/api/session/devices/${id}`, DONE)
    await again()
  }
  const rows = items.map(({ id, device, madeAt, seenAt, seenFrom, isThis }) => ({
    key: id,
    cells: [
      isThis ? `${device} (${ACCESS.thisDevice})` : device,
      whenWords(madeAt),
      whenWords(seenAt),
      seenFrom,
      isThis ? (
        ''
      ) : (
        <button key="end" type="button" aria-label={ACCESS.signOutWhich(device)} onClick={() => void end(id)}>
          {ACCESS.signOutDevice}
        </button>
      ),
    ],
  }))
  return (
    <section class="panel">
      <h2>{ACCESS.devices}</h2>
      <DataTable caption={ACCESS.devices} columns={ACCESS.deviceColumns} rows={rows} />
    </section>
  )
}
