import type { EN_GATE } from './en-gate.ts'

export const ES_GATE: Readonly<Record<keyof typeof EN_GATE, string>> = {
  'status/hold': 'Alto',
  'status/check': 'Revisar',
  'status/ready': 'Listo',
  'meaning/hold': 'No abra el aire. Lo que falta está abajo; el silencio es un alto.',
  'meaning/elsewhere':
    'En papel no falta nada. Solo puede estar listo donde está la perforación, firmado hoy, en el sitio.',
  'meaning/stale':
    'No falta nada, pero este aparato lleva un turno sin saber de los demás. Comuníquese y pregunte otra vez.',
  'meaning/ready':
    'La perforación {bore:whole} puede empezar, aquí, con el plan mostrado. Termina a las {until:text}, y de inmediato con lluvia, una pausa, marcas perdidas o cualquier cambio.',
  'point/1': 'Aviso vigente ahora',
  'point/2': 'Contestaron todos los dueños, y el terreno concuerda',
  'point/3': 'Marcas legibles; línea blanca sobre pozos, camino, franja de desvío y más allá',
  'point/4': 'Líneas privadas y de no afiliados: preguntadas, recorridas, localizadas',
  'point/5': 'Cada línea cruzada descubierta, medida y vigilada',
  'point/6': 'Separación con las profundidades medidas',
  'point/7': 'Pozos',
  'point/8': 'Línea de aire',
  'point/9': 'Tarjeta de emergencia y cuadrilla',
  'point/10': 'Permisos en el sitio',
  'point/11': 'Mirar después lo que se cruzó',
  'point/others': 'El plan mismo',
  'state/pass': 'contestado',
  'state/hold': 'falta',
  'state/set-aside': 'apartado por dos personas',
  'open/ticket-not-yet': 'El aviso aún no empieza. Espere su inicio tal como está impreso.',
  'open/ticket-over': 'No hay aviso vigente. Renuévelo; solo cuenta el aviso impreso.',
  'open/plan-hold': 'El plan lo detiene: {of:text}.',
  'open/not-signed': 'Sin firma hoy: {of:text}',
  'open/no-photo': 'Sin foto: {of:text}',
  'open/watchers-short': 'Vigías: hacen falta {needed:whole}, con nombre van {had:whole}.',
  'layer/day': 'Una vez al día',
  'layer/site': 'Una vez por sitio',
  'layer/bore': 'Esta perforación',
  'item/pits-inspected': 'La persona competente revisó hoy cada pozo y cada cata',
  'item/pits-protected':
    'Lados en talud, ademados o con caja según el suelo; escalera puesta; tierra a {2 ft|0.6 m} del borde',
  'item/pits-dry-and-aired': 'No se junta agua; aire medido donde podría ser malo',
  'item/hose-joints':
    'Cada unión de manguera con pasador y amarre; la menor presión nominal alcanza la fijada',
  'item/cut-off-tried': 'Corte probado; compresor del lado de donde viene el viento con su válvula a mano',
  'item/crew-briefed': 'La cuadrilla sabe la señal de alto, la salida y quién llama al 911',
  'item/private-lines-walked': 'Líneas privadas preguntadas por nombre, ruta recorrida, cada una localizada',
  'item/outside-owners-asked':
    'Dueños fuera del aviso preguntados: agua municipal, drenaje, ferrocarril, dueño del terreno',
  'item/emergency-card':
    'Tarjeta de emergencia llena: dirección, teléfonos de dueños, punto de reunión del lado de donde viene el viento',
  'item/permits-on-site': 'Permisos de calle, vía y terreno aquí',
  'item/marks-and-white-line':
    'Marcas legibles; línea blanca sobre los dos pozos, el camino, la franja de desvío y más allá',
  'item/answers-fit-ground': 'La respuesta de cada dueño concuerda con lo que hay en el suelo',
  'item/crossings-taped':
    'Cada línea cruzada vista en su cata, medida, con la profundidad en el plan; cata más honda que el topo',
  'item/sewer-proved':
    'Drenaje hondo probado de otra manera: fondos de pozos de visita, profundidad por cámara, {3 ft|0.9 m} o más entre ambos, según la ley',
  'item/watchers-named': 'Un vigía en cada hueco abierto, con nombre y señal de alto',
  'item/clearance-seen': 'Separaciones del plan mostrado leídas con las profundidades medidas',
  'item/exit-pit-empty':
    'Puntería lista y primer {pie|metro} por vigilar; pozo de salida vacío hasta cerrar y purgar el aire',
  'item/after-look-agreed': 'Acordado quién mira después los drenajes cruzados, antes del gas o del servicio',
  'cause/rain': 'Lluvia',
  'cause/break': 'Una pausa en el trabajo',
  'cause/marks-lost': 'Marcas perdidas',
  'cause/path-changed': 'Cambió el camino',
  'cause/off-line': 'El topo se salió de su línea',
  'cause/scope': 'Trabajo más allá del aviso',
  'cause/other': 'Cambió otra cosa',
  'after/none': 'Aún no para gas ni servicio: nadie ha mirado lo que cruzó la perforación.',
  'after/done': 'Lo que cruzó la perforación lo miró {by:text}, {at:text}.',
}
