import type { CrossingModel } from '../../state/crossing-model.ts'
import { type Path, valueAt } from '../../state/document-path.ts'
import type { Json } from '../../state/json.ts'

type Way = { readonly way: string; readonly words: string; readonly fresh: Json | undefined }

type Props = {
  readonly model: CrossingModel
  readonly path: Path
  readonly legend: string
  readonly chosen: string
  readonly ways: readonly Way[]
  /** Further places of the file that belong to this choice. */
  readonly alsoAt?: Path
  readonly alsoFresh?: Readonly<Record<string, Json | undefined>>
}

/** Several ways of saying one thing; the one left is put aside, and comes back as it was. */
export function ChoiceOfWay({ model, path, legend, chosen, ways, alsoAt, alsoFresh }: Props) {
  const places = alsoAt === undefined ? [path] : [path, alsoAt]
  const freshAt = (place: Path, { way, fresh }: Way) => (place === path ? fresh : alsoFresh?.[way])
  const choose = (wanted: Way) => {
    if (wanted.way === chosen) return
    for (const place of places) {
      const left = valueAt(model.document.value, place)
      if (left === undefined) model.setAside.delete(`${place} ${chosen}`)
      else model.setAside.set(`${place} ${chosen}`, left)
    }
    model.setAll(
      places.map((place) => [place, model.setAside.get(`${place} ${wanted.way}`) ?? freshAt(place, wanted)]),
    )
  }
  return (
    <fieldset class="ways">
      <legend>{legend}</legend>
      {ways.map((each) => (
        <label key={each.way} class="way">
          <input
            type="radio"
            name={`way-${path}`}
            checked={each.way === chosen}
            onChange={() => choose(each)}
          />
          <span>{each.words}</span>
        </label>
      ))}
    </fieldset>
  )
}
