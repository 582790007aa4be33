import { KINDS, type Kind } from '../core/kinds.ts'
import { LIKELY_UNITS } from '../quantities/kind-units.ts'
import type { BothLanguages, Language } from './language.ts'

/** What a field asks for, by the kind of quantity. */
const KIND_WORDS: BothLanguages<Kind> = {
  en: {
    length: 'a length',
    diameter: 'a diameter',
    depth: 'a depth',
    movement: 'a small movement',
    altitude: 'an altitude',
    area: 'an area',
    volume: 'a volume',
    duration: 'a time',
    speed: 'a speed',
    particleVelocity: 'a peak particle velocity',
    wearRate: 'a rate of wear',
    mass: 'a mass',
    massFlow: 'a mass per time',
    density: 'a density',
    unitWeight: 'a unit weight',
    force: 'a force',
    energy: 'an energy',
    power: 'a power',
    gaugePressure: 'a gauge pressure',
    absolutePressure: 'an absolute pressure',
    pressureDifference: 'a pressure difference',
    stress: 'a strength or stress',
    volumeFlow: 'an air flow',
    liquidFlow: 'a flow of fuel or oil',
    conductance: 'a flow per pressure (C of ISO 6358)',
    temperature: 'a temperature',
    temperatureDifference: 'a temperature difference',
    angle: 'an angle',
    frequency: 'a rate of blows',
    drift: 'a drift',
    expansion: 'an expansion per degree',
    resistancePerBlow: 'a length per blow',
    perLength: 'a figure per length',
    ratio: 'a plain number',
    count: 'a whole number',
  },
  es: {
    length: 'una longitud',
    diameter: 'un diámetro',
    depth: 'una profundidad',
    movement: 'un movimiento pequeño',
    altitude: 'una altitud',
    area: 'un área',
    volume: 'un volumen',
    duration: 'un tiempo',
    speed: 'una velocidad',
    particleVelocity: 'una velocidad pico de partícula',
    wearRate: 'un ritmo de desgaste',
    mass: 'una masa',
    massFlow: 'una masa por tiempo',
    density: 'una densidad',
    unitWeight: 'un peso volumétrico',
    force: 'una fuerza',
    energy: 'una energía',
    power: 'una potencia',
    gaugePressure: 'una presión manométrica',
    absolutePressure: 'una presión absoluta',
    pressureDifference: 'una diferencia de presión',
    stress: 'una resistencia o esfuerzo',
    volumeFlow: 'un caudal de aire',
    liquidFlow: 'un caudal de combustible o aceite',
    conductance: 'un caudal por presión (C de ISO 6358)',
    temperature: 'una temperatura',
    temperatureDifference: 'una diferencia de temperatura',
    angle: 'un ángulo',
    frequency: 'un ritmo de golpes',
    drift: 'una deriva',
    expansion: 'una dilatación por grado',
    resistancePerBlow: 'una longitud por golpe',
    perLength: 'una cifra por longitud',
    ratio: 'un número sin unidad',
    count: 'un número entero',
  },
}

export const isKindName = (name: string): name is Kind => Object.hasOwn(KINDS, name)

/** "a diameter, in in or mm": the kind in words and the units it usually comes in. */
export function kindWords(kind: Kind, lang: Language): string {
  const units = LIKELY_UNITS[kind].filter((unit) => unit !== '')
  const words = KIND_WORDS[lang][kind]
  return units.length === 0 ? words : `${words} (${units.join(', ')})`
}
