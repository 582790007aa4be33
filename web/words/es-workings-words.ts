import type { EN_FIELD_WORDS } from './field-words.ts'
import type { EN_SHELL } from './shell-words.ts'
import type { EN_WORKINGS } from './workings-words.ts'

export const ES_FIELD_WORDS: typeof EN_FIELD_WORDS = {
  notSaid: 'sin dato',
  planKeeps: (what) => `El plan conserva el tubo de antes: ${what}`,
  yes: 'sí',
  no: 'no',
  remove: (what) => `Quitar ${what}`,
  reads: (reads, not) => (not === null ? `se lee ${reads}` : `se lee ${reads}, no ${not}`),
}

export const ES_SHELL: typeof EN_SHELL = {
  name: 'Underlane',
  promise: 'planea perforaciones con topo neumático',
  crossing: 'Cruce',
  saved: 'Guardados',
  shop: 'Taller',
  workings: 'Cálculos',
  places: 'Lugares',
  units: 'Unidades',
  language: 'Idioma',
  english: 'English',
  spanish: 'Español',
  languageMissing: 'El español aún no se ha descargado y no hay señal.',
  theme: 'Pantalla',
  themes: { system: 'automática', light: 'clara', dark: 'oscura', sun: 'a pleno sol' },
  settings: 'Unidades, idioma, pantalla',
  us: 'EE. UU.',
  si: 'SI',
  struck: 'Golpe · atorado',
  signIn: 'Entrar',
  mine: 'Mi acceso',
  notFound: 'No hay ninguna página en esta dirección.',
  caution:
    'Underlane planea; no autoriza. Deciden la ley local, el centro de notificación, los dueños de las otras líneas, la persona competente en la obra y los ingenieros con cédula.',
  engine: 'cifras',
  loading: 'Un momento …',
}

export const ES_WORKINGS: typeof EN_WORKINGS = {
  heading: 'Cálculos',
  intro:
    'Cada fórmula detrás de las cifras, con sus fuentes, un formulario para probarla y los valores impresos contra los que se compara.',
  find: 'Buscar una fórmula',
  count: (shown, all) => `${shown} de ${all} fórmulas`,
  runAll: 'Comparar con todos los valores impresos',
  running: 'Calculando …',
  ran: (passed, failed) => `${passed} valores impresos se cumplen, ${failed} no.`,
  try: 'Pruébela',
  example: 'Llenar con un ejemplo impreso',
  usual: (value) => `vacío se toma ${value}`,
  gives: 'Resulta',
  sources: 'Fuentes',
  remarks: 'Ojo',
  checks: 'Valores impresos',
  runChecks: 'Comparar con sus valores impresos',
  none: 'Todavía no hay un valor impreso con qué compararla.',
  columns: ['caso', 'valor de', 'impreso', 'nuestro', 'difiere', 'puede diferir', 'veredicto'],
  backTo: (figure) => `Volver a la cifra: ${figure}`,
  back: 'Volver al cruce',
  failed: 'No se pudieron traer los valores impresos.',
  met: 'se cumple',
  notMet: 'no se cumple',
  knownWrong: 'errata conocida: hace bien en no cumplirse',
  noAnswer: 'sin respuesta',
  position: 'longitud, latitud',
  list: 'números separados por comas',
}
