import type { Issue } from '../core/outcome.ts'
import type { AirBranchInput } from '../core/plan/air-input.ts'

type Found = Omit<Issue, 'path'> & { readonly path: readonly (string | number)[] }

const conflict = (accepted: string, ...path: readonly (string | number)[]): Found => ({
  code: 'inputs-conflict',
  accepted,
  path: ['branches', ...path],
})

/** The work of solving a tree grows eightfold with each fork on the way to a tool. */
const MOST_FORKS = 3

/** How many branches lie between the compressor and the end of this one; none where it comes back to itself. */
function depthOf(start: AirBranchInput, byName: ReadonlyMap<string, AirBranchInput>): number | null {
  const met = new Set<string>()
  let at: AirBranchInput | undefined = start
  while (at !== undefined) {
    if (met.has(at.name)) return null
    met.add(at.name)
    at = at.from === null ? undefined : byName.get(at.from)
  }
  return met.size
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
    } else {
      const depth = depthOf(branch, byName)
      if (depth === null) {
        found.push(conflict('branches that lead away from the compressor and never back', index, 'from'))
      } else if (depth > MOST_FORKS) {
        found.push(conflict('at most three branches one after another', index, 'from'))
      }
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
