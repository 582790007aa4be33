import type { Plan } from '../../../shared/core/plan/plan.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { comparedFigures } from './compared-figures.ts'
import { DataTable } from './data-table.tsx'

const W = ANSWERS.compare

/** Every figure of A beside the same figure now; what moved is said in words and stands out by weight. */
export const ComparedTable = ({ a, now }: { readonly a: Plan; readonly now: Plan }) => (
  <DataTable
    caption={W.caption}
    columns={W.columns}
    rows={comparedFigures(a, now).map((figure) => ({
      key: figure.name,
      cells: [
        figure.name,
        figure.a,
        figure.now,
        figure.hasMoved ? (
          <strong key="difference">{figure.difference}</strong>
        ) : (
          <span key="difference">{figure.difference}</span>
        ),
      ],
    }))}
  />
)
