import type { EN_CAUTIONS } from './en-cautions.ts'

/** Lo que puede lastimar a alguien o echar a perder la perforación. */
export const ES_CAUTIONS = {
  'plan-does-not-permit':
    'Este plan no es permiso para excavar. Mandan la ley del lugar, el boleto impreso, el dueño de cada línea y la persona competente en la obra.',
  'unlisted-lines':
    'Este plan solo conoce las líneas que usted anotó y no dice nada de las demás. Recorra el trazo buscando medidores, tapas, parches y postes, y pregunte por líneas privadas.',
  'keep-exit-pit-empty':
    'Nadie dentro del pozo de recepción hasta cerrar y purgar el aire. En reversa, tampoco en el pozo de lanzamiento.',
  'air-off-and-bled':
    'Aire cerrado y purgado, comprobado en cero, antes de poner la mano en el topo, un acople o la aceitera.',
  'hear-and-see':
    'Protección de oídos y ojos mientras trabaja el topo. Mida el ruido en el oído del operador; las reglas van según esa lectura. OSHA permite 8 h al día a 90 dB(A), 4 h a 95 dB(A), 2 h a 100 dB(A), 1 h a 105 dB(A); NIOSH aconseja 8 h a 85 dB(A), la mitad por cada 3 dB(A) más.',
  'pit-can-bury':
    'Un pozo de {floorM:depth} de hondo puede enterrar a una persona. Talud, ademe o caja de protección; la persona competente lo revisa hoy y después de llover, antes de que alguien entre.',
  'gas-struck':
    'Gas golpeado, rozado o con olor: todos fuera a pie, hacia el lado de donde viene el viento. Déjelo así. No regrese a encender ni apagar nada cerca del gas. Ni válvulas, ni relleno, ni sacar el topo. Desde {330 ft|100 m} o más llame al 911 y luego al dueño del gas. Avise a los vecinos, tengan o no servicio de gas. Siga las reglas del dueño y del lugar.',
  'power-struck':
    'Cable golpeado: trate como energizados el topo, la manguera, la tubería, el agua del pozo y el compresor. No toque nada, ni entre ni salga del pozo. Aleje bien a los demás, llame al 911 y al dueño de la línea, y espere a que el dueño diga que está sin corriente. Un cable callado no es un cable muerto.',
  'line-overhead':
    'Línea aérea: excavadora, pluma y tubo quedan a {overheadM:depth}, más si el dueño lo dice. Pregunte el voltaje; alguien vigila mientras se mueve la máquina.',
  'stop-short-of-wall':
    'Pare el topo {stopShortM:tape} antes del muro y abra desde adentro. Nunca golpee el muro ni la cimentación.',
  'work-inside':
    'Trabajo en interiores: el escape afuera del edificio, aire fresco adentro y alguien al alcance de la voz. Tape lo que no deba mancharse con la niebla de aceite.',
  'regulate-down':
    'Sin consumo el compresor sube hasta {unloadedGaugePa:gaugePressure}; el topo trabaja a {toolGaugePa:gaugePressure}. Baje el regulador y respete la presión más baja permitida en la línea.',
  icing:
    'A {temperatureK:temperature} el escape puede congelarse. Aceite de invierno, separador de agua purgado, y busque hielo en la manguera antes de culpar al topo.',
  'tool-starves':
    'Al topo de «{branch:text}» solo le llegan {toolGaugePa:gaugePressure} mientras golpean los demás. Use un topo a la vez o póngale una manguera más gruesa.',
  'engine-too-weak':
    'A {altitudeM:altitude} un motor sin turbo da aire para {capacityM3PerS:volumeFlow}; los topos piden {demandM3PerS:volumeFlow}. Traiga una máquina con turbo o más grande.',
  'engine-not-said':
    'A {altitudeM:altitude} un motor sin turbo pierde más fuerza de la que ahorra el aire delgado. Diga cuál es.',
  'air-uncertain':
    'Con una manguera áspera y acoples estrechos al topo le podrían llegar apenas {toolGaugePa:gaugePressure}. Lea un manómetro junto al topo antes de confiar en el tiempo.',
  'water-in-line':
    'Caen unos {waterKgPerS:massFlow} de agua camino al topo. Purgue el tanque, ponga un separador y sople la manguera antes de conectar.',
  'hose-can-whip':
    'Una manguera de {boreM:diameter} que se suelta empuja al principio con {thrustN:force} y guarda {energyJ:energy}. Válvula de corte en la fuente (obligatoria con más de {1/2 in|13 mm}), retén en cada unión, pasadores puestos.',
  'no-oiler':
    'La línea no tiene aceitera. Un topo en seco se acaba en días: ponga una, o aceite a mano en cada parada con el aire cerrado y purgado.',
  'compressor-too-small':
    'El topo pide {demandM3PerS:volumeFlow} y el compresor da {capacityM3PerS:volumeFlow} en este lugar, así que la presión cae. Use un solo topo a la vez o traiga una máquina mayor.',
  breakout:
    'El suelo puede reventar sobre la perforación en {atM:length}: solo hay {coverRatio:oneDecimal} diámetros de perforación de recubrimiento. Nadie encima mientras trabaja el topo.',
  heave:
    'En un día malo la superficie se levanta {heaveM:movement}. Tome niveles y fotos antes, durante y después.',
  'hole-may-close':
    'El hueco puede cerrarse detrás del topo. Tenga la tubería lista antes de empezar, y remólquela o jálela enseguida.',
  'poor-grip':
    'El suelo blando o suelto puede no agarrar al topo: golpea y no avanza. Sujételo de la manguera al arrancar; no lo levante con ella.',
  'below-water':
    'La perforación va bajo el agua subterránea. Bomba trabajando, nadie en un pozo que se llena, y cuente con que las paredes se desmoronen.',
  'layers-deflect':
    'Donde cambia el suelo el topo puede torcerse. Obsérvelo por las calicatas y revise la línea en el pozo.',
  'may-stall':
    'El topo puede atorarse: probabilidad {probability:chance}. Si no se mueve en 2 min: pare y revise aire, aceite y manguera. Dos veces en el mismo lugar: decida, no siga golpeando.',
  'rate-not-validated':
    'El avance sale de mecánica de suelos publicada y de nuestro criterio; no se ha comprobado con sus perforaciones. Tome el tiempo de sus propias marcas en la manguera.',
  'void-around-pipe':
    'Queda un hueco alrededor del tubo: {radialGapM:movement} por lado, {annulusM3PerM:perLength} para rellenar. Bajo pavimento, rellénelo o pregunte al dueño de la calle.',
  'grade-other-ways':
    'Esta línea debe caer {grade:grade}. Un topo que no se dirige no mantiene pendiente: piense en un método dirigido, zanja abierta, o una perforación mayor con el tubo acomodado adentro. Tiene que pasar la campana, no solo el tubo.',
  'towed-no-reverse':
    'Con la tubería a remolque el topo no puede salir en reversa. Si se atora, hay que excavar.',
  'prove-reverse-first':
    'Pruebe la reversa en el pozo de lanzamiento, un poco atrás y adelante, antes de contar con ella.',
  'weak-link':
    'Plástico para gas: jale con un eslabón de ruptura por debajo del límite del tubo, revise la punta que sale y déjelo reposar una noche antes de conectar.',
  'below-call-out':
    'El precio queda por debajo de su salida mínima de {minorUnits:money}. Cobre el mínimo o júntelo con otro trabajo.',
} as const satisfies Record<keyof typeof EN_CAUTIONS, string>
