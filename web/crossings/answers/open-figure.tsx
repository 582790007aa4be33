import { showWorking, type WorkingOf } from './working-shown.ts'

/** A figure in a cell that opens its working. */
export const OpenFigure = (of: WorkingOf) => (
  <button
    type="button"
    class="cell-figure"
    aria-label={`${of.label}: ${of.value}`}
    onClick={() => showWorking(of)}
  >
    {of.value}
  </button>
)
