/** Lo que se pregunta sobre las líneas y lo que se dice de ellas. */
export const ES_LINE_WORDS = {
  privateLine: {
    lateral: 'lateral de drenaje',
    septic: 'fosa séptica o sus tubos',
    propane: 'línea de propano',
    lighting: 'luces de patio',
    irrigation: 'riego',
    pool: 'líneas de la alberca',
    well: 'pozo de agua y su línea',
    'outbuilding-power': 'corriente al cobertizo o la cochera',
    'dog-fence': 'cerca invisible para perros',
    drains: 'drenes del patio',
  },
  privateAnswer: { no: 'no hay', away: 'sí, localizada, queda lejos', yes: 'sí', unknown: 'no se sabe' },
  ownerAnswer: {
    marked: 'marcado',
    clear: 'libre: no tenemos nada aquí',
    unmarked: 'sin marcar, con motivo',
    'not-present': 'no está en la zona',
    exposed: 'descubierto por el dueño',
    'met-on-site': 'reunión en el sitio',
  },
  foundOnGround: {
    fits: 'como respondieron',
    nothing: 'nada en el terreno',
    differs: 'otra cosa en el terreno',
  },
  qualityScheme: {
    'asce-38': 'ASCE 38 (EE. UU.)',
    'pas-128': 'PAS 128 (Reino Unido)',
    'as-5488': 'AS 5488 (de Australia)',
  },
} as const
