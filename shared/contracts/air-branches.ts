import type { Issue } from '../core/outcome.ts'
import type { AirBranchInput } from '../core/plan/air-input.ts'

type Found = Omit<Issue, 'path'> & { readonly path: readonly (string | number)[] }

const conflict = (accepted: string, ...path: readonly (string | number)[]): Found => ({
  code: 'inputs-conflict',
  accepted,
  path: ['branches', ...path],
})

/** Whether a branch comes back to itself on the way to the compressor. */
function goesRound(start: AirBranchInput, byName: ReadonlyMap<string, AirBranchInput>): boolean {
  const met = new Set<string>()
  let at: AirBranchInput | undefined = start
  while (at !== undefined && at.from !== null) {
    if (met.has(at.name)) return true
    met.add(at.name)
    at = byName.get(at.from)
  }
  return false
}

/** What cannot be a tree that leads from one compressor to this crossing's tool. */
export function airBranchIssues(branches: readonly AirBranchInput[], tools: number | undefined): Found[] {
  if (branches.length === 0) return []
  const byName = new Map(branches.map((branch) => [branch.name, branch]))
  const feeding = new Set(branches.map((branch) => branch.from))
  const found: Found[] = []
  branches.forEach((branch, index) => {
    if (branches.findIndex(({ name }) => name === branch.name) !== index) {
      found.push(conflict('a name of its own for each branch', index, 'name'))
    }
    if (branch.from !== null && !byName.has(branch.from)) {
      const accepted = [...byName.keys()].join(', ')
      found.push({ code: 'unknown-choice', given: branch.from, accepted, path: ['branches', index, 'from'] })
    } else if (goesRound(branch, byName)) {
      found.push(conflict('branches that lead away from the compressor and never back', index, 'from'))
    }
    if (branch.tool !== null && feeding.has(branch.name)) {
      found.push(conflict('a tool at the end of a branch, not where another starts', index, 'tool'))
    }
  })
  if (!branches.some((branch) => branch.tool === null && !feeding.has(branch.name))) {
    found.push(conflict('one branch without a tool of its own: this crossing’s tool stands there'))
  }
  if (tools !== undefined && tools > 1) {
    found.push({
      code: 'inputs-conflict',
      accepted: 'a number of tools, or branches with a tool each',
      path: ['tools'],
    })
  }
  return found
}
