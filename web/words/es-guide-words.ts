import type { EN_GUIDE } from './guide-words.ts'

export const ES_GUIDE: typeof EN_GUIDE = {
  summary: 'Guía de campo: lo que dice la mano',
  why: 'De suelo fresco y húmedo, de la profundidad de la perforación. Dice el tipo y qué tan duro es, nada más: una medición vale más, y ninguna prueba de mano hace seguro entrar a un pozo.',
  use: 'usar:',
  thumb: {
    heading: 'Pulgar',
    how: 'Hunda el pulgar en un terrón fresco.',
    standing: 'Fija qué tan duro. Palabras de Terzaghi y Peck.',
    signs: [
      'Se escurre entre los dedos',
      'El pulgar entra con poco esfuerzo; se moldea fácil',
      'El pulgar entra con algo de esfuerzo',
      'El pulgar apenas lo abolla, con mucho esfuerzo',
      'Solo la uña lo marca',
      'La uña casi no lo marca',
    ],
  },
  ribbon: {
    heading: 'Cinta',
    how: 'Mójelo hasta que sea masilla y saque una cinta sobre el dedo hasta que se rompa.',
    standing:
      'Fija el tipo. Largos de memoria, como los usan los edafólogos; no dice nada de la resistencia.',
    signs: [
      'Más de {2 in|50 mm} antes de romperse',
      '{1 a 2 in|25 a 50 mm}',
      'Menos de {1 in|25 mm}, arenosa al tacto',
    ],
  },
  dry: {
    heading: 'Terrón seco',
    how: 'Deje secar un terrón y trate de romperlo.',
    standing: 'Fija el tipo. Apéndice de OSHA: lo que se deshace solo en granos es granular.',
    signs: [
      'Se deshace solo en granos',
      'Se hace polvo entre los dedos',
      'Se rompe solo con esfuerzo, o no se rompe',
    ],
  },
}
