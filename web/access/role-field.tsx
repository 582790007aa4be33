import { ROLE_NAMES, type RoleName } from '../../shared/contracts/access.ts'
import { ACCESS } from './access-words.ts'

type Props = {
  readonly id: string
  readonly label: string
  readonly value: RoleName
  readonly without?: RoleName
  readonly onChange: (role: RoleName) => void
}

export const RoleSelect = ({ id, label, value, without, onChange }: Props) => (
  <select
    id={id}
    aria-label={label}
    value={value}
    onChange={(event) => {
      const chosen = ROLE_NAMES.find((role) => role === event.currentTarget.value)
      if (chosen) onChange(chosen)
    }}
  >
    {ROLE_NAMES.filter((role) => role !== without).map((role) => (
      <option key={role} value={role}>
        {ACCESS.roles[role]}
      </option>
    ))}
  </select>
)

export const RoleField = (props: Props) => (
  <div class="field">
    <label for={props.id}>{props.label}</label>
    <RoleSelect {...props} />
  </div>
)
