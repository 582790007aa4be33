import { useState } from 'preact/hooks'
import { SIGN_ITEMS, type SignItem, type SignLayer } from '../../shared/core/digsafe/sign-off-items.ts'
import { gateWord } from '../../shared/text/gate-sentences.ts'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { say } from '../state/unit-choice.ts'
import { smallPhoto } from './photo.ts'
import type { SignedStore, TakenPhoto } from './signed-store.ts'
import { type Shown, signOffNow } from './site-state.ts'
import { SITE } from './site-words.ts'

type Props = {
  readonly layer: SignLayer
  readonly shown: Shown
  readonly store: SignedStore
  /** Items that still want a signature or a photo. */
  readonly open: ReadonlySet<string>
  readonly isAsked: (item: SignItem) => boolean
  /** Whoever asks stands at the bore: then what is open is shown. */
  readonly isHere: boolean
  readonly name: string
  readonly onName: (name: string) => void
}

function ItemRow({
  item,
  isOpen,
  hasPhoto,
  onPhoto,
}: {
  readonly item: SignItem
  readonly isOpen: boolean
  readonly hasPhoto: boolean
  readonly onPhoto: (file: File) => void
}) {
  const id = `photo-${item.id}`
  return (
    <li class="site-item">
      <StatusMark shape={isOpen ? 'stop' : 'good'} />
      <div>
        <p>
          {gateWord('item', item.id, say.value)}{' '}
          <span class="fine">{gateWord('state', isOpen ? 'hold' : 'pass', say.value)}</span>
        </p>
        {item.needsPhoto && (
          <div class="field">
            <label for={id}>{hasPhoto ? SITE.photoTaken : SITE.photo}</label>
            <input
              id={id}
              type="file"
              accept="image/*"
              capture="environment"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0]
                if (file) onPhoto(file)
              }}
            />
          </div>
        )}
      </div>
    </li>
  )
}

type SignerProps = Pick<Props, 'layer' | 'name' | 'onName'> & {
  /** null where nobody has to watch. */
  readonly watchers: string | null
  readonly onWatchers: (names: string) => void
}

const Signer = ({ layer, name, onName, watchers, onWatchers }: SignerProps) => (
  <div class="fields">
    {watchers !== null && (
      <div class="field">
        <label for="site-watchers">{SITE.watcherNames}</label>
        <textarea
          id="site-watchers"
          rows={3}
          value={watchers}
          onInput={(event) => onWatchers(event.currentTarget.value)}
        />
      </div>
    )}
    <div class="field">
      <label for={`site-name-${layer}`}>{SITE.name}</label>
      <input
        id={`site-name-${layer}`}
        type="text"
        autocomplete="name"
        value={name}
        onInput={(event) => onName(event.currentTarget.value)}
      />
    </div>
  </div>
)

/** One layer of the list: read, photographed where it kills, and signed once for all of it. */
export function LayerForm({ layer, shown, store, open, isAsked, isHere, name, onName }: Props) {
  const [photos, setPhotos] = useState<readonly TakenPhoto[]>([])
  const [watchers, setWatchers] = useState('')
  const [said, setSaid] = useState('')
  const items = SIGN_ITEMS.filter((item) => item.layer === layer && isAsked(item))
  const needsWatchers = items.some((item) => item.when === 'watchers')
  const take = async (item: string, file: File) => {
    const data = await smallPhoto(file)
    setSaid(data === null ? SITE.photoUnread : '')
    if (data !== null) setPhotos((before) => [...before.filter((each) => each.item !== item), { item, data }])
  }
  const sign = async () => {
    if (name.trim() === '') return setSaid(SITE.nameFirst)
    const file = signOffNow(
      shown,
      {
        layer,
        by: name.trim(),
        items: items.map((item) => item.id),
        watchers: watchers
          .split(/[\n,;]/)
          .map((each) => each.trim())
          .filter((each) => each !== ''),
      },
      new Date(),
    )
    const isKept = await store.sign(file, photos)
    setSaid(isKept ? SITE.signedNow : SITE.noRoom)
    if (isKept) setPhotos([])
  }
  const left = items.filter((item) => open.has(item.id)).length
  return (
    <div class="site-layer">
      <details class="folded" open={isHere && left > 0}>
        <summary>
          {gateWord('layer', layer, say.value)}{' '}
          <span class="fine">{left === 0 ? gateWord('state', 'pass', say.value) : SITE.open(left)}</span>
        </summary>
        <ul class="site-items">
          {items.map((item) => (
            <ItemRow
              key={item.id}
              item={item}
              isOpen={open.has(item.id)}
              hasPhoto={photos.some((each) => each.item === item.id)}
              onPhoto={(file) => void take(item.id, file)}
            />
          ))}
        </ul>
        <Signer
          layer={layer}
          name={name}
          onName={onName}
          watchers={needsWatchers ? watchers : null}
          onWatchers={setWatchers}
        />
        <button type="button" onClick={() => void sign()}>
          {SITE.sign}
        </button>
      </details>
      <p role="status">{said}</p>
    </div>
  )
}
