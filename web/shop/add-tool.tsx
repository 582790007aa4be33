import { useState } from 'preact/hooks'
import { Folded } from '../crossings/form/panel.tsx'
import { keepDocument } from './shop-store.ts'
import { SHOP } from './shop-words.ts'

/** A tool that the shop has not had yet. */
export function AddTool() {
  const W = SHOP.add
  const [name, setName] = useState('')
  const [diameter, setDiameter] = useState('')
  const [serial, setSerial] = useState('')
  const [hasFailed, setFailed] = useState(false)
  const add = async () => {
    const isKept = await keepDocument('tools', null, null, {
      name: name.trim(),
      diameter: diameter.trim(),
      ...(serial.trim() === '' ? {} : { serial: serial.trim() }),
    })
    setFailed(!isKept)
    if (!isKept) return
    setName('')
    setDiameter('')
    setSerial('')
  }
  const fields = [
    ['tool-name', W.name, name, setName],
    ['tool-diameter', W.diameter, diameter, setDiameter],
    ['tool-serial', W.serial, serial, setSerial],
  ] as const
  return (
    <Folded words={W.heading}>
      {fields.map(([id, label, value, set]) => (
        <div class="field" key={id}>
          <label for={id}>{label}</label>
          <input
            id={id}
            type="text"
            autocomplete="off"
            maxLength={80}
            value={value}
            onInput={(event) => set(event.currentTarget.value)}
          />
        </div>
      ))}
      <div class="whole-row">
        <button
          type="button"
          disabled={name.trim() === '' || diameter.trim() === ''}
          onClick={() => void add()}
        >
          {W.save}
        </button>
        <p role="status" class="fine">
          {hasFailed ? W.failed : ''}
        </p>
      </div>
    </Folded>
  )
}
