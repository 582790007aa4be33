import type { OptionWords } from './option-words.ts'

export const ES_OPTIONS: OptionWords = {
  depthTo: [
    ['centre', 'centro de la perforación'],
    ['top', 'parte de arriba del tubo'],
    ['bottom', 'fondo de la perforación'],
    ['floor', 'piso del pozo'],
  ],
  utilityDepthTo: [
    ['top', 'su parte de arriba'],
    ['centre', 'su centro'],
    ['bottom', 'su fondo'],
  ],
  uscs: [
    ['CL', 'CL arcilla de baja plasticidad'],
    ['CH', 'CH arcilla plástica'],
    ['ML', 'ML limo'],
    ['MH', 'MH limo elástico'],
    ['SM', 'SM arena limosa'],
    ['SC', 'SC arena arcillosa'],
    ['SP', 'SP arena de un tamaño'],
    ['SW', 'SW arena de todos los tamaños'],
    ['GM', 'GM grava limosa'],
    ['GC', 'GC grava arcillosa'],
    ['GP', 'GP grava de un tamaño'],
    ['GW', 'GW grava de todos los tamaños'],
    ['OL', 'OL limo orgánico'],
    ['OH', 'OH arcilla orgánica'],
    ['PT', 'PT turba'],
  ],
  evidence: [
    ['records', 'solo planos'],
    ['marked', 'marcada en el suelo'],
    ['detected', 'detectada, profundidad leída'],
    ['exposed', 'descubierta, medida con cinta'],
    ['proved', 'comprobada de otra manera'],
  ],
}
