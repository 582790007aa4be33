import type { SignOffFile } from '../../shared/contracts/sign-off.ts'

export type SetAsideMonth = {
  /** `2026-12`. */
  readonly month: string
  readonly files: readonly SignOffFile[]
}

/** Rules set aside, counted by month, the last month first. */
export function setAsideMonths(files: readonly SignOffFile[]): readonly SetAsideMonth[] {
  const aside = files.filter((each) => each.setAside !== undefined)
  const months = [...new Set(aside.map((each) => each.on.slice(0, 7)))].sort().reverse()
  return months.map((month) => ({ month, files: aside.filter((each) => each.on.startsWith(month)) }))
}
