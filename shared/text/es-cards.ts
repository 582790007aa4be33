import type { Card, CardId } from './card-words.ts'
import type { EN_CARD_PAGE } from './en-cards.ts'

export const ES_CARDS: Readonly<Record<CardId, Card>> = {
  gas: {
    title: 'Gas: golpe, raspón u olor',
    now: [
      'Grite alto. Todos fuera de los dos pozos y de todo hoyo, a pie, hacia el lado de donde viene el viento.',
      'Suelte los mandos. Déjelo. No regrese a prender ni apagar nada cerca del gas. Nada se arranca, nada se enciende, sin teléfono cerca.',
      'Desde aire limpio, a {330 ft|100 m} o más por todos lados: llame al {emergency} y luego al dueño del gas.',
    ],
    after: [
      'Avise a los edificios de alrededor, también a los que no tienen gas. El gas sigue la perforación y el suelo: diga por dónde va la perforación.',
      'Que no entren personas, autos ni llamas.',
      'Deje que ventee. Deje arder un fuego. Una línea de alta presión que arde pide más distancia que {330 ft|100 m}: pregunte al dueño.',
      'Cuente a la cuadrilla. Nadie regresa hasta que el dueño del gas lo diga.',
      'Avise al centro de notificación y a su empresa. Anote hora, lugar y profundidad.',
    ],
    never: [
      'Mover una válvula, tapar, prensar o doblar.',
      'Rellenar o tapar el hoyo.',
      'Regresar por herramienta, o a un interruptor dentro del gas.',
      'Sacar el topo o echarlo en reversa.',
      'Tomar un raspón o una abolladura por nada: de cada uno se avisa al dueño.',
    ],
    note: 'Motores: lo publicado no se pone de acuerdo en si apagarlos. En esto sí: no arrancar nada y no entrar al gas para llegar a un interruptor. Quien ya está junto al compresor, del lado de donde viene el viento, puede cortar el aire si la regla del dueño del gas lo permite.',
  },
  electric: {
    title: 'Cable de luz golpeado',
    now: [
      'Dé por vivos el topo, la manguera, el tubo, el agua del pozo y el compresor.',
      'No toque nada. Sobre una máquina: quédese arriba, salvo que arda.',
      'Si tiene que moverse: pies juntos, arrastrando o a saltos. Nunca toque máquina y suelo a la vez.',
    ],
    after: [
      'Los demás bien lejos: la distancia del dueño; {35 ft|11 m} si no la sabe.',
      'Llame al {emergency} y al dueño de la luz.',
      'Espere a que el dueño diga que está muerto y a tierra.',
    ],
    never: [
      'Entrar o salir del pozo mientras toca la manguera.',
      'Desacoplar la manguera o jalarla.',
      'Tomar un cable callado por uno muerto: lo pueden volver a conectar.',
      'Tocar a un herido antes de probar que no hay corriente.',
    ],
  },
  water: {
    title: 'Tubo de agua golpeado',
    now: [
      'Corte el aire. Todos fuera: los pozos se llenan y sus paredes se caen.',
      'Lejos del chorro, y de todo aparato eléctrico mojado.',
    ],
    after: [
      'Llame al dueño del agua; al {emergency} si peligra una calle o un edificio.',
      'Busque suelo lavado bajo el pavimento y cables al descubierto.',
      'El pozo falló: la persona competente lo revisa otra vez antes de que alguien entre.',
    ],
    never: [
      'Cerrar usted las válvulas de la calle.',
      'Seguir trabajando en un pozo que se llena.',
      'Tender encima de un raspón.',
    ],
  },
  sewer: {
    title: 'Drenaje golpeado',
    now: ['Alto. Fuera del pozo si hay aguas negras u olor a gas: arde, envenena y quita el aire.'],
    after: [
      'Llame al dueño del drenaje y al del edificio.',
      'Mida el aire antes de que alguien vuelva a entrar.',
      'Lávese, cure las heridas, desinfecte el equipo.',
      'Pase la cámara. Délo por cruce dentro del drenaje hasta que alguien haya visto que no lo es.',
      'Si el tubo nuevo es o será de gas: pare el trabajo y avise que aquí no se corta ni se sondea ningún drenaje.',
    ],
    never: [
      'Meter el tubo y dejarlo así.',
      'Callarse porque todavía drena.',
      'Dejar que lo corte un destapador de drenajes.',
    ],
  },
  telecom: {
    title: 'Telecomunicación o fibra golpeada',
    now: [
      'Alto. Los ojos lejos de las puntas de fibra cortada.',
      'Busque corriente en la misma zanja antes de tocar nada.',
    ],
    after: [
      'Llame al dueño de inmediato: por ahí pueden pasar las llamadas al {emergency}.',
      'Anote hora y lugar. Deje las puntas como están.',
    ],
    never: [
      'Mirar la punta de una fibra, con luz o sin ella.',
      'Empalmarla o jalar holgura.',
      'Cortar pareja la punta suelta.',
    ],
  },
  stuck: {
    title: 'Topo atorado: 2 min sin avanzar',
    now: [
      'Deje de golpear en el mismo lugar. Pozo de recepción vacío; en reversa, también el de lanzamiento.',
      'Aire: manómetro del compresor, válvula abierta del todo, sin dobleces, sin fugas en los acoples.',
      'Aceite: ¿película en el guante al escape? ¿Hielo en el escape o en la manguera? Descongele, aceite de invierno, purgue el separador de agua.',
      'Un ayudante mantiene la manguera tirante, a mano. Pruebe otra vez hacia adelante.',
      'Reversa un pie y adelante; dos veces. No con el tubo a remolque: ahí no hay reversa.',
    ],
    after: [
      'Sigue atorado: sáquelo en reversa, si quiere salir.',
      'Dos veces en el mismo lugar: pare y decida. Ubique la punta (abajo), vea qué hay encima y abra hasta ella a mano o con vacío; el boleto tiene que cubrir el hoyo nuevo.',
      'O perfore otra vez a {1 ft|0.3 m} o más, o de 3 a 4 diámetros, lo que sea mayor, revisando otra vez las líneas.',
      'El hueco que queda va en el plano final, y se rellena bajo pavimento.',
    ],
    never: [
      'Manos en topo, acople o lubricador antes de cortar y purgar el aire.',
      'Jalar el topo por la manguera con una máquina, o izarlo de ella.',
      'Seguir golpeando en el mismo lugar.',
      'Excavar en la zona de otra línea con algo que no sean las manos o el vacío.',
    ],
  },
}

export const ES_CARD_PAGE: { readonly [Key in keyof typeof EN_CARD_PAGE]: (typeof EN_CARD_PAGE)[Key] } = {
  heading: '¿Qué pasó?',
  now: 'Ya',
  after: 'Después',
  never: 'Nunca',
  others: 'Otras tarjetas',
  print: 'Imprimir las tarjetas',
  call: 'Llamar',
  notGiven: 'sin anotar',
  crossing: 'Cruce en mano',
  address: 'Dirección',
  meeting: 'Punto de reunión, del lado de donde viene el viento',
  caller: 'Pide ayuda',
  engines: 'Regla del dueño del gas sobre motores',
  numbers: 'Teléfonos',
  noNumbers: 'No se ha anotado el teléfono de ningún dueño para este cruce.',
  noCrossing: 'En este navegador no se ha abierto ningún cruce.',
  sources: 'Según',
  caution:
    'Primero van la ley del lugar, el dueño de la línea, los bomberos y las reglas de su empresa. Estas tarjetas funcionan sin señal.',
  nose: 'Dónde está la punta',
  mark: 'Marca de la manguera en la cara de lanzamiento',
  zero: 'La manguera está marcada desde',
  fromNose: 'la punta del topo',
  fromTail: 'la cola: se suman topo y acople',
  tool: 'Topo y acople, juntos',
  noseAt: (station: string) => `Punta a ${station} del lanzamiento.`,
  noseLeft: (left: string) => `Faltan ${left}.`,
  noPlan: 'El cruce como está no se puede planear: sin profundidad calculada, deriva la usual.',
  noseBeyond: 'Eso queda más allá del pozo de recepción: lea otra vez la marca.',
  noseDepth: (depth: string) => `Centro del topo a unos ${depth} bajo el suelo, si guardó la línea.`,
  noseCircle: (reach: string) =>
    `A los lados, arriba o abajo: dentro de ${reach} en 9 de 10 casos, contado desde el lanzamiento. Abra un hoyo así de ancho.`,
  toolNotKnown: 'Falta el largo del topo: mida topo y acople.',
}
