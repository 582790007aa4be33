import { useEffect, useRef, useState } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import type { JsonObject } from '../state/json.ts'
import { arriveWithReport, type BroughtIn, bringIn, broughtIn, type ImportDoors } from './bring-in.ts'
import { FILES } from './saved-words.ts'

const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

/** Files let go anywhere on the page are brought in; without this the browser would leave the page for them. */
function useFileDrop(onFiles: (files: readonly File[]) => void): boolean {
  const [isOver, setOver] = useState(false)
  const latest = useRef(onFiles)
  latest.current = onFiles
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (!hasFiles(event)) return
      event.preventDefault()
      setOver(true)
    }
    const leave = (event: DragEvent) => {
      // No related target: the window itself has been left.
      if (event.relatedTarget === null) setOver(false)
    }
    const drop = (event: DragEvent) => {
      if (!hasFiles(event)) return
      event.preventDefault()
      setOver(false)
      latest.current([...(event.dataTransfer?.files ?? [])])
    }
    addEventListener('dragover', over)
    addEventListener('dragleave', leave)
    addEventListener('drop', drop)
    return () => {
      removeEventListener('dragover', over)
      removeEventListener('dragleave', leave)
      removeEventListener('drop', drop)
    }
  }, [])
  return isOver
}

function Report({
  report,
  path,
  onOpen,
}: {
  readonly report: BroughtIn
  readonly path: string
  readonly onOpen: (document: JsonObject) => void
}) {
  if (report.state === 'saving') return <p>{FILES.saving(report.done, report.all)}</p>
  const { saved, waiting, bad } = report
  return (
    <>
      {saved > 0 && <p>{FILES.saved(saved)}</p>}
      {waiting > 0 && <p>{FILES.waiting(waiting)}</p>}
      {bad.length > 0 && <p>{FILES.bad(bad.length)}</p>}
      <ul class="bad-files">
        {bad.map(({ from, sentence, document }, place) => (
          // Two files may have one name: the place tells them apart.
          <li key={`${from} ${place}`}>
            <StatusMark shape="stop" />
            <div>
              <strong>{from}</strong> {sentence}
              {document !== null && (
                <div>
                  <button type="button" class="quiet" onClick={() => onOpen(document)}>
                    {FILES.openToMend}
                  </button>
                </div>
              )}
            </div>
          </li>
        ))}
      </ul>
      <div class="actions">
        <button
          type="button"
          onClick={() => {
            broughtIn.value = null
          }}
        >
          {FILES.close}
        </button>
        {saved > 0 && path !== '/crossings' && <a href="/crossings">{FILES.toList}</a>}
      </div>
    </>
  )
}

/** Takes files dropped on the page, and says what came of them. */
export function FilesBroughtIn({ doors }: { readonly doors: ImportDoors }) {
  const isOver = useFileDrop((files) => void bringIn(files, doors))
  const report = broughtIn.value
  const { path } = useLocation()
  useEffect(arriveWithReport, [])
  return (
    <>
      {isOver && <div class="drop-sign">{FILES.drop}</div>}
      <div role="status" class="files-status">
        {report !== null && (
          <section class="files-brought-in" aria-label={FILES.region}>
            <Report report={report} path={path} onOpen={doors.open} />
          </section>
        )}
      </div>
    </>
  )
}
