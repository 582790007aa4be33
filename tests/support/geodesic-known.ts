// As in the programs: a line between two positions can be planned.
import '../../shared/core/line/geodesic.ts'
