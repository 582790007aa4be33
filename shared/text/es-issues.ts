import type { EN_ISSUE_PARTS, EN_ISSUES, EN_QUESTIONS } from './en-issues.ts'

/** Qué tiene de malo lo que se dio. */
export const ES_ISSUES = {
  required: 'Falta este dato.',
  'unknown-key': '«{given:text}» no es una clave conocida aquí.',
  'wrong-type': '«{given:text}» no es el tipo de valor que va aquí.',
  'wrong-type/bare': 'No es el tipo de valor que va aquí.',
  'unknown-choice': '«{given:text}» no está en la lista.',
  'unknown-choice/bare': 'Falta un valor aquí, o no está en la lista.',
  'not-a-quantity': '«{given:text}» no se lee como un número con unidad.',
  'not-a-quantity/pipe': '«{given:text}» no es un tubo que se conozca aquí.',
  'not-a-quantity/zero-denominator': '«{given:text}» divide entre cero.',
  'unknown-unit': 'No se conoce la unidad de «{given:text}».',
  'wrong-dimension': 'La unidad de «{given:text}» mide otra cosa.',
  'wrong-dimension/gauge': '«{given:text}» es sobre el aire del lugar (manométrica); aquí se pide otra cosa.',
  'wrong-dimension/absolute': '«{given:text}» es sobre el vacío (absoluta); aquí se pide otra cosa.',
  'wrong-dimension/difference': '«{given:text}» es una diferencia; aquí se pide otra cosa.',
  'comma-in-number': '«{given:text}» tiene una coma, que se lee de dos maneras. Los decimales van con punto.',
  'too-long': 'Es demasiado largo.',
  'too-long/most': 'Es demasiado largo: {most:whole} caracteres como máximo.',
  'out-of-range': 'Está fuera de lo posible.',
  'out-of-range/given': '«{given:text}» está fuera de lo posible.',
  ask: 'Se puede leer de más de una manera.',
  'ask/no-unit': '«{given:text}» no tiene unidad, y no la adivinamos.',
  'ask/given': '«{given:text}» se puede leer de más de una manera.',
  'not-finite': 'No es un número con el que se pueda trabajar.',
  'not-json': 'No se lee como JSON.',
  'not-json/given': 'No se lee como JSON: {given:text}.',
  'unknown-relation': 'Ninguna fórmula se llama «{given:text}».',
  'not-available': 'No está disponible aquí.',
  'not-available/given': '«{given:text}» no está disponible aquí.',
  'inputs-conflict': 'Estos datos no concuerdan entre sí.',
  'no-convergence':
    'El cálculo no llegó a un resultado. Busque un error en los datos; si no lo hay, avísenos.',
  'pipe-does-not-pass':
    'La tubería no pasa por la perforación. Use un topo mayor, una segunda pasada con ensanchador o una tubería menor.',
  'pipe-does-not-pass/sizes':
    'La tubería no pasa: {bundleM:diameter} por una perforación de {boreM:diameter}. Use un topo mayor, una segunda pasada con ensanchador o una tubería menor.',
  'stretch-outside-line':
    'Esto queda en {stationM:length}, más allá del final de la línea en {lengthM:length}.',
  'no-operating-point':
    'Compresor, manguera y topo no encuentran una presión a la que trabajar. Revise los tres.',
  'no-operating-point/choked':
    'La manguera no deja pasar el aire que pide el topo. Use una más gruesa, una línea más corta o menos topos.',
  'no-operating-point/no-pressure':
    'El compresor no sostiene ninguna presión útil con este topo. Use un compresor mayor, un topo menor o menos topos.',
  'no-ground-here': 'Nadie ha dicho qué suelo hay de {fromM:length} a {toM:length}.',
  'body-too-large': 'Es demasiado para recibirlo de una vez.',
  'damaged-file':
    'El archivo no está entero, o no es lo que dice su tipo. Envíelo otra vez, o guárdelo de nuevo.',
  'two-kinds-of-file':
    'En este archivo se esconde otro de otra clase, así que no se guarda. Guarde la imagen de nuevo y envíe esa.',
} as const satisfies Record<keyof typeof EN_ISSUES, string>

export const ES_QUESTIONS = {
  'depth.to': '¿A qué se miden estas profundidades?',
  depthTo: '¿A qué se mide la profundidad de esta línea?',
  'compressor.pressure': 'Ningún topo trabaja con tan poco. ¿Es manométrica y de verdad tan baja?',
} as const satisfies Record<keyof typeof EN_QUESTIONS, string>

export const ES_ISSUE_PARTS = {
  accepted: 'Se acepta: {list:text}.',
  needed: 'Se necesita: {list:text}.',
  didYouMean: '¿Quiso decir {list:text}?',
  answers: 'Conteste {list:text}.',
  between: 'Debe estar entre {min:text} y {max:text}.',
  atLeast: 'Debe ser al menos {min:text}.',
  atMost: 'Debe ser como máximo {max:text}.',
  or: 'o',
} as const satisfies Record<keyof typeof EN_ISSUE_PARTS, string>
