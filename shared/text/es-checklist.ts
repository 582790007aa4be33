import type { EN_CHECKLIST } from './en-checklist.ts'

/** Lo que se revisa antes de abrir el aire; cada punto lleva el nombre de quien lo vio. */
export const ES_CHECKLIST = {
  'ticket-on-sheet':
    'Número de boleto, inicio, vencimiento y fecha de renovación en la hoja de trabajo, copiados del boleto impreso.',
  'owners-answered':
    'Todos los dueños del boleto contestaron y lo que dicen concuerda con la pintura en el suelo.',
  'white-line-whole-path':
    'La línea blanca muestra los dos pozos, el trazo, la franja donde puede desviarse el topo y un tramo de más.',
  'non-members-asked':
    'Se preguntó a los dueños fuera del centro de notificación: agua y drenaje del municipio, ferrocarril, dueño del predio.',
  'trenchless-said':
    'El boleto dice sin zanja, con topo neumático, para que respondan también los dueños de drenajes sin marcar.',
  'route-walked':
    'Trazo recorrido a pie: medidores, pedestales, tapas, parches, postes de luz, registros de limpieza, tanques.',
  'private-lines-asked':
    'Se preguntó al propietario por líneas privadas y están ubicadas: descarga, fosa, propano, alumbrado, riego, alberca, cerca para perro.',
  'crossings-exposed':
    'Todas las líneas que se cruzan están descubiertas; profundidad, a qué se midió y tamaño están en el plan.',
  'watchers-and-stop-signal':
    'Un vigía en cada hueco abierto y señal de alto acordada. Se ve pasar el topo, o se para. Se vigila desde el primer momento.',
  'clearance-with-measured-depths':
    'Separación calculada otra vez con las profundidades medidas. Si no alcanza: mover, bajar o zanja abierta.',
  'photos-of-marks':
    'Fotos de cada color de pintura antes de excavar, y de cada línea descubierta con la cinta a la vista.',
  'emergency-card':
    'Tarjeta de emergencia a la mano: dirección, teléfonos de los dueños, punto de reunión del lado de donde viene el viento, quién llama.',
  'competent-person-today': 'Persona competente nombrada, y pozos aprobados con firma hoy.',
  'gas-hand-exposed':
    'Gas descubierto a mano o con succión antes de usar máquinas cerca. Se preguntó al dueño si quiere a su gente presente.',
  'gas-compressor-upwind':
    'Compresor del lado de donde viene el viento con válvula de cierre ahí, detector de gas encendido, sin fumar, dos salidas del pozo.',
  'gas-engines-asked':
    'Se preguntó al dueño del gas qué se hace con los motores si escapa gas; la cuadrilla lo sabe. Nadie regresa al gas para llegar a un interruptor.',
  'gas-separation':
    'La tubería nueva queda a {12 in|300 mm} o más de la línea de gas, o a lo que pida el dueño si es más.',
  'power-owner-asked':
    'Se preguntó al dueño de la línea eléctrica: voltaje, en ducto o directa, si puede cortarse. Descubierta a mano con herramienta aislada.',
  'power-crew-briefed':
    'Cuadrilla avisada: topo, manguera y tubería pueden energizarse; nadie toca la manguera mientras el topo pasa el cable.',
  'plant-off-overhead':
    'La maquinaria queda a {10 ft|3 m} de las líneas aéreas, más según el voltaje; alguien la vigila.',
  'fibre-hand-exposed': 'Telecomunicaciones descubiertas a mano; dueño avisado si es troncal o lleva el 911.',
  'sewer-and-laterals-found':
    'Drenaje y cada descarga ubicados con cámara o descubiertos; profundidad de la plantilla anotada.',
  'water-sewer-apart':
    'Agua y drenaje a {10 ft|3 m} de lado, o {18 in|450 mm} en vertical donde se cruzan; o está aquí la dispensa de la autoridad.',
  'cross-bore-looked-at':
    'Después de perforar: drenajes y descargas vistos con cámara, por una persona con nombre, antes de dar gas o servicio. Programado no es visto.',
  'sewer-proved-another-way':
    'El drenaje que no se abrió se comprobó de otra manera, donde la ley lo permite: fondos de pozos de visita y profundidad con cámara, {3 ft|0.9 m} o más entre ambos, con nombre.',
  'parallel-exposed':
    'Línea al costado descubierta cada cierto tramo, y desviación hacia ella revisada en el extremo lejano.',
  ladder: 'Escalera a menos de {25 ft|7.5 m} de todos en el pozo, {3 ft|0.9 m} por encima del borde.',
  'air-tested':
    'Aire del pozo medido donde pueda ser malo: oxígeno 19.5 % o más, gas por debajo de 20 % de su límite inferior. Equipo de rescate a mano.',
  'slope-shore-shield':
    'Pozo con talud, ademe o caja según su suelo; tipo C mientras la persona competente no diga algo mejor. Tierra a {2 ft|0.6 m} del borde.',
  'pit-edge-guarded': 'Pozo de {6 ft|1.8 m} o más con baranda o tapa en la orilla.',
  'pit-engineer': 'Pozo de más de {20 ft|6.1 m}: el diseño del ingeniero está en la obra.',
  'paved-pits-boxed':
    'Los pozos en pavimento van ademados o en caja, sin talud; placas o tapa para la noche.',
  'traffic-plan': 'Plan de tránsito puesto: señales, barreras, chalecos visibles.',
  'permit-on-site':
    'Permiso de la calle en la obra; recubrimiento, horario y reposición leídos a la cuadrilla.',
  'levels-before-during-after':
    'Niveles del pavimento antes, durante y después. Se para al llegar al límite del permiso.',
  'hose-cut-off':
    'Corte automático en la fuente o en el ramal para manguera de más de {1/2 in|13 mm} por dentro; probado hoy.',
  'whip-restraints':
    'Cable antilátigo en cada unión, pasadores puestos, y la presión más baja permitida de la línea es mayor que la ajustada.',
  'hose-tape-zero':
    'Todos saben dónde empieza la marca de la manguera: en la punta por regla; desde la cola se suman topo y acople.',
  'bleed-before-opening': 'Cerrar, purgar y comprobar cero antes de abrir cualquier acople.',
  'oil-and-tilt-test':
    'Aceitera llena, película de aceite en el guante al escape; prueba de inclinación hecha: el martillo corre libre.',
  'reverse-proved': 'Reversa probada en el pozo de lanzamiento, antes de contar con ella.',
  'antifreeze-oil':
    'Aceite de invierno puesto, separador de agua purgado, escape y manguera revisados por hielo.',
  'marks-in-snow': 'Marcas puestas otra vez sobre la nieve, en negro o desplazadas a algo fijo.',
  'frost-not-shoring': 'El suelo helado no se toma por ademe.',
  'seepage-type-c': 'Agua en el pozo: se trata como tipo C, bomba vigilada, nadie en un pozo que se llena.',
  'silica-when-cutting':
    'Pavimento cortado en húmedo o con cubierta y aspiradora; mascarillas según la regla de sílice.',
  'noise-at-the-ear': 'Lectura de ruido en el oído del operador anotada; protectores puestos si se pasa.',
  'exit-pit-empty-until-bled':
    'Pozo de recepción vacío hasta cerrar y purgar el aire. En reversa, también el de lanzamiento.',
  'ground-bridge':
    'Antes de cortar una toma de agua metálica: probar si la tierra eléctrica del edificio pasa por ella, y puentearla.',
  'wall-from-inside':
    'El topo para antes del muro; el muro se abre con corona desde adentro, arriba de la cimentación.',
  'weak-link': 'Eslabón de ruptura puesto en plástico para gas, por debajo del límite del tubo.',
} as const satisfies Record<keyof typeof EN_CHECKLIST, string>
