import type { DepthDatum } from '../../shared/core/plan/crossing-input.ts'
import { bySystem } from '../../shared/text/by-system.ts'
import type { Say } from '../../shared/text/language.ts'
import type { DepthHandle } from './depth-handles.ts'

const english = {
  heading: '{Profile|Long section}',
  pane: 'Drawing of the {profile|long section}. Plus and minus zoom, 0 fits, arrows move it.',
  tools: 'Zoom and scale',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  fit: 'Fit',
  exaggeration: 'Depth scale',
  auto: 'as suits',
  sameScale: 'same as length',
  times: '{n} times',
  launch: 'Launch',
  middle: 'Pit {n}',
  reception: '{Receiving|Reception}',
  top: 'top',
  centre: '{center|centre}',
  bottom: 'bottom',
  floor: 'floor',
  hint: 'Drag a round handle, or press arrow keys on it, to change a depth.',
  whole: 'Whole drawing',
  sectionOnly: 'Section only',
  undoShort: 'Undo',
  undo: 'Undo the last drag',
  undoTo: 'Undo: {what} back to {depth}',
  undoStraight: 'Undo: {what} back to the straight line',
  toRow: '{what}, to its entry in the form',
  more: 'Scale, file and paper',
  table: 'The same as a table',
  save: 'Save drawing',
  paper: 'Paper',
  letter: 'Letter',
  a4: 'A4',
  jobSheet: 'Print job sheet',
  print: 'Print to scale',
  printNow: 'Print',
  back: 'Back',
  printHint: 'Landscape, at 100 %: “fit to page” would spoil the scale.',
  former: 'The form holds an entry that cannot be drawn: this is the last complete one.',
}
type Words = Readonly<Record<keyof typeof english, string>>

const spanish: Words = {
  heading: 'Perfil longitudinal',
  pane: 'Dibujo del perfil longitudinal. Más y menos acercan y alejan, 0 lo ajusta, las flechas lo mueven.',
  tools: 'Acercamiento y escala',
  zoomIn: 'Acercar',
  zoomOut: 'Alejar',
  fit: 'Ajustar',
  exaggeration: 'Escala de la profundidad',
  auto: 'la que convenga',
  sameScale: 'igual que la longitud',
  times: '{n} veces',
  launch: 'Lanzamiento',
  middle: 'Pozo {n}',
  reception: 'Recepción',
  top: 'arriba',
  centre: 'centro',
  bottom: 'fondo',
  floor: 'piso',
  hint: 'Arrastre un círculo, o use las flechas sobre él, para cambiar una profundidad.',
  whole: 'Dibujo entero',
  sectionOnly: 'Solo el perfil',
  undoShort: 'Deshacer',
  undo: 'Deshacer el último arrastre',
  undoTo: 'Deshacer: {what} vuelve a {depth}',
  undoStraight: 'Deshacer: {what} vuelve a la línea recta',
  toRow: '{what}, a su lugar en el formulario',
  more: 'Escala, archivo y papel',
  table: 'Lo mismo como tabla',
  save: 'Guardar el dibujo',
  paper: 'Papel',
  letter: 'Carta',
  a4: 'A4',
  jobSheet: 'Imprimir hoja de trabajo',
  print: 'Imprimir a escala',
  printNow: 'Imprimir',
  back: 'Volver',
  printHint: 'Horizontal, al 100 %: «ajustar a la página» arruinaría la escala.',
  former: 'El formulario tiene un dato que no se puede dibujar: este es el último completo.',
}

/** The words about the drawing; what stands in it comes with it. They arrive with it, in both languages. */
export function profileWord(
  key: keyof Words,
  { lang, system }: Say,
  values: Readonly<Record<string, string>> = {},
): string {
  const template = (lang === 'es' ? spanish : english)[key]
  const named = Object.entries(values).reduce(
    (text, [name, value]) => text.replace(`{${name}}`, () => value),
    bySystem(template, system),
  )
  return named
}

export const handleName = ({ end, number }: DepthHandle, say: Say): string =>
  profileWord(end, say, { n: String(number) })

/** 'Launch: center 4 ft 2 in'. */
export function handleValue(handle: DepthHandle, depth: string, say: Say): string {
  const datum: DepthDatum = handle.to
  return `${handleName(handle, say)}: ${profileWord(datum, say)} ${depth}`
}
