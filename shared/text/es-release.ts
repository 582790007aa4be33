import type { EN_RELEASE, EN_STATUS, EN_STATUS_MEANING } from './en-release.ts'

/** Por qué un plan se detiene o se revisa, y cómo salir de cada caso. */
export const ES_RELEASE = {
  'lines-not-asked':
    'Nadie ha dicho qué hay enterrado aquí. Anote cada línea que se cruza; si no hay ninguna, anote a quién se le preguntó y qué día.',
  'none-here-not-signed':
    'La lista de líneas está vacía y nadie le puso su nombre. Anote a quién se le preguntó y qué día.',
  'locate-not-asked':
    'No hay solicitud de marcado registrada. Llame al centro de notificación y anote el boleto y las respuestas.',
  'jurisdiction-not-given':
    'Nadie ha dicho qué reglas de marcado rigen, de qué estado o país. Elija el lugar junto al boleto.',
  'jurisdiction-not-known':
    'Aquí no hay reglas de marcado para «{given:text}». Elija el lugar de la lista. Si no está: lea su ley y las páginas del centro de notificación, ponga su nombre y el día, y guíese solo por el boleto impreso.',
  'private-not-asked':
    'No se ha preguntado por líneas privadas: el marcado oficial no pinta ninguna. Pregunte al dueño del sitio, por su nombre, por fosa séptica, propano, luces de patio, riego y lo demás, y anote quién respondió.',
  'private-not-known':
    'Líneas privadas de las que nadie supo responder: {private:privateLine}. Vuelva a preguntar, recorra la ruta, o hágalas localizar; sobre un «no sé» no se excava.',
  'private-not-signed': 'Las respuestas sobre líneas privadas no tienen nombre ni día. Anote quién las dio.',
  'private-not-listed':
    'Aquí hay una y no está en la lista de líneas cruzadas: {private:privateLine}. Anótela con su estación y descúbrala, o hágala localizar y diga que queda lejos.',
  'exposed-without-record':
    'Línea {line:whole}, {kind:utility}: se dice descubierta, sin quién, cuándo ni foto de la cinta en el hoyo. Añádalos.',
  'ticket-before-call':
    'El boleto empieza ({starts:text}) antes de la llamada ({called:text}). Copie ambos otra vez del boleto impreso.',
  'owner-not-answered':
    '{owner:text}: aún sin respuesta. Llame al dueño o al centro de notificación; nadie excava sobre el silencio.',
  'answer-not-on-ground':
    '{owner:text} respondió «{answer:text}» y el terreno dice otra cosa. Pare, tome una foto y vuelva a llamar antes de que nadie excave.',
  'no-ticket': 'Falta el boleto de marcado. Copie del boleto impreso la fecha de inicio y la de vencimiento.',
  'no-owner-answered':
    'Ningún dueño de línea ha contestado. Anote la respuesta de cada uno; que no contesten no es un sí.',
  'owner-silent':
    '{owner:text}: todavía sin respuesta que sirva («{answer:text}»). Llámeles o llame al centro de notificación; con silencio no se excava.',
  'line-not-exposed':
    'Línea {line:whole}, {kind:utility}: sin descubrir. Descúbrala a mano o con succión donde la cruza la perforación y mida profundidad y tamaño. La pintura no da profundidad.',
  'line-not-exposed/sewer':
    'Línea {line:whole}, {kind:utility}: sin descubrir. Descúbrala donde la cruza la perforación. Si la ley lo permite y está demasiado honda: plantillas de los pozos de visita y profundidad con cámara, con nombre de quien lo comprobó.',
  'line-not-exposed/storm':
    'Línea {line:whole}, {kind:utility}: sin descubrir. Descúbrala donde la cruza la perforación. Si la ley lo permite y está demasiado honda: plantillas de los pozos de visita y profundidad con cámara, con nombre de quien lo comprobó.',
  'parallel-not-exposed':
    'Línea {line:whole}, {kind:utility}: va al costado y está sin descubrir. Descúbrala cada cierto tramo a lo largo, y en el extremo lejano, donde el topo puede haberse desviado más.',
  'line-depth-not-known':
    'Línea {line:whole}, {kind:utility}: falta la profundidad. Mídala en la calicata y diga si es a la parte de arriba, al centro o al fondo.',
  'line-size-not-known': 'Línea {line:whole}, {kind:utility}: falta el tamaño. Mídalo en la calicata.',
  'clearance-without-name':
    'Línea {line:whole}, {kind:utility}: separación del dueño sin nombre. Anote quién de la empresa la dio.',
  'proved-too-near':
    'Línea {line:whole}, {kind:utility}: probada sin descubrirla, y a solo {gapM:tapeDown} de la perforación. Hacen falta {3 ft|0.9 m} o más. Descúbrala, o aléjese de ella.',
  'clearance-short':
    'Línea {line:whole}, {kind:utility}: hay {separationM:tapeDown} del centro de la perforación a la línea; se necesitan {requiredM:tapeUp}, faltan {shortM:tapeUp}. Aleje la perforación esa medida (más hondo, si pasa por debajo), lance desde el pozo más cercano o mueva el trazo.',
  'cover-too-small':
    'Con {kind:surface} encima, de {fromM:length} a {toM:length}: {coverM:tapeDown} de recubrimiento, {coverRatio:oneDecimal} diámetros de perforación. No alcanza: se piden {wantedM:tapeUp}. Baje más o use un topo menor; la cifra del permiso sustituye a la nuestra.',
  'cover-check':
    'Con {kind:surface} encima, de {fromM:length} a {toM:length}: {coverM:tapeDown} de recubrimiento, {coverRatio:oneDecimal} diámetros de perforación. Es poco: lo usual son {wantedM:tapeUp}. Tome fotos antes y vigile la superficie mientras trabaja el topo.',
  'ticket-dates':
    'El boleto vence ({expires:text}) antes de empezar ({starts:text}). Copie otra vez las dos fechas del boleto impreso.',
  'listed-owner-silent':
    'Línea {line:whole}, {kind:utility}: no hay respuesta anotada de {owner:text}. Anótela, o llámelos; la falta de respuesta no es un sí.',
  'line-owner-not-given':
    'Línea {line:whole}, {kind:utility}: nadie ha dicho de quién es, así que ninguna respuesta le corresponde. Anote su dueño, o diga que es privada.',
  'marked-but-none-listed':
    '{owner:text} marcó algo aquí y no hay ninguna línea en la lista. Anote lo marcado, con su estación, o pregunte al dueño qué significa la pintura.',
  'pit-needs-engineer':
    'Un fondo de pozo a {floorM:tape} pasa de {20 ft|6.1 m}: lo diseña un ingeniero registrado. Traiga el diseño, o haga la perforación menos honda.',
  'launch-has-no-pit':
    'El topo saldría de: {end:end}, donde no hay lugar para acostarlo y apuntarlo. Lance desde un pozo, o invierta la perforación.',
  'over-rated-pressure':
    'Al topo le llegan {toolGaugePa:gaugePressure} y está hecho para {ratedGaugePa:gaugePressure}. Baje el regulador: nada trabaja por encima de su límite.',
  'tool-rating-not-given':
    'Al topo le llegan {toolGaugePa:gaugePressure}, más de lo que aguanta la mayoría, y nadie ha dado su presión permitida. Baje el regulador, o anote la presión de su placa.',
  'over-hose-rating':
    'La línea puede llegar a {toolGaugePa:gaugePressure} y una manguera está hecha para {ratedGaugePa:gaugePressure}. Baje el regulador en la máquina o cambie la manguera: nada trabaja por encima de su límite.',
  'grade-not-given':
    'Este tubo se coloca con pendiente y no se dio ninguna. Anote la caída que necesita, por ejemplo 1/4 in por ft.',
  'footing-not-known':
    'La perforación termina en un muro y nadie ha dado la profundidad de su zapata. Mídala o tómela de los planos, y anótela con el muro.',
  'bore-at-footing':
    'La perforación llega al muro con su fondo a {bottomM:tape}; la zapata empieza a {footingM:tape}. Apunte por encima de la zapata, o entre de otra manera con el ingeniero del edificio.',
  'shot-beyond-unguided':
    'Un tiro de {lengthM:length} es demasiado largo para un topo que no se dirige. Haga un pozo intermedio o use un método dirigido.',
  'shot-long-for-body':
    'Un tiro de {lengthM:length} es largo para este topo. Haga un pozo intermedio, use un cuerpo mayor, o revise la desviación antes de empezar.',
  'ground-outside-model':
    'Parte de este suelo queda fuera de lo que cubren las fórmulas. Haga un pozo de prueba y diga qué encontró, o use otro método.',
  'pull-not-sane':
    'Para meter la tubería: «{method:pull}» no conviene: {why:pullWhy}. Elija otra manera o cambie lo que estorba.',
  'pull-not-sane/none': 'Para meter la tubería: {why:pullWhy}. Cambie el topo, la manguera o la tubería.',
  'coil-too-short':
    'Al rollo le faltan {shortM:tapeUp}, contando las puntas en los dos extremos. Cargue un rollo más largo; ninguna unión dentro de la perforación.',
  'fit-tight':
    'Justo: la perforación mide {ratio:twoDecimals} veces el tubo. La tubería puede atorarse; use un topo mayor, o agarre y acople más chicos.',
  'gap-wide':
    'Holgado: quedan {radialGapM:movement} alrededor del tubo. Puede asentarse, sobre todo bajo pavimento. Use un topo menor o rellene el espacio.',
  'air-too-low':
    'Al topo le llegan solo {toolGaugePa:gaugePressure}: no alcanza para trabajar. Manguera más gruesa, línea más corta, menos topos o un compresor mayor.',
  'air-weak':
    'Al topo le llegan {toolGaugePa:gaugePressure}: débil, y avanzará lento. Lo más barato es una manguera más gruesa o más corta.',
  'unlikely-to-arrive':
    'Lo más probable es que no llegue: probabilidad de llegar {probability:chance}. Otro método, un topo mayor o tiros más cortos.',
  'may-not-arrive':
    'Puede no llegar al primer intento: probabilidad de llegar {probability:chance}. Tenga acordado el plan B y su precio antes de empezar.',
  'start-again':
    'La revisión del primer {pie|metro} halló el topo {offM:length} fuera en {stationM:length}: más de 1 de cada 100. Retroceda y empiece de nuevo en un frente sano.',
  'readings-disagree':
    'Perforación {number:whole}: lo que se leyó del topo no concuerda, o se desvía más de lo usual. Toda duda se toma {times:oneDecimal} veces más ancha. Mire otra vez; un topo visto en una calicata vale más que un instrumento.',
  'may-miss-window':
    'Puede salir fuera de la ventana del pozo de recepción: probabilidad de acertar {probability:chance}. Haga el pozo más ancho, acorte el tiro o apunte con más cuidado.',
  'grade-not-promised':
    'Con un topo que no se dirige no se puede prometer la pendiente: probabilidad de llegar a menos de {1 in|25 mm} de la rasante {probability:chance}. Use un método dirigido o zanja abierta, o perfore más grande y acomode el tubo por dentro.',
} as const satisfies Record<keyof typeof EN_RELEASE, string>

export const ES_STATUS = {
  hold: 'Alto',
  check: 'Revisar',
} as const satisfies Record<keyof typeof EN_STATUS, string>

export const ES_STATUS_MEANING = {
  hold: 'No perfore. Una regla no se cumple o falta un dato; los motivos dicen qué hacer.',
  check:
    'En papel nada lo detiene. Revise los puntos de abajo; la lista de obra todavía se firma en el sitio, hoy mismo.',
} as const satisfies Record<keyof typeof EN_STATUS_MEANING, string>
