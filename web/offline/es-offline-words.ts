import type { EN_OFFLINE } from './offline-words.ts'

const changes = (count: number): string => (count === 1 ? '1 cambio' : `${count} cambios`)

export const ES_OFFLINE: typeof EN_OFFLINE = {
  kept: {
    now: 'guardado hace un momento',
    minutes: (count) => `guardado hace ${count} min`,
    hours: (count) => `guardado hace ${count} h`,
    days: (count) => `guardado hace ${count} días`,
  },
  label: 'Red y versión',
  offline: 'Sin red: las respuestas siguen funcionando.',
  notKept: 'Deje abierta esta página: este navegador no pudo guardarla para abrirla otra vez.',
  outbox: (count) => `${changes(count)} por enviar.`,
  stuck: (count) =>
    `${changes(count)} que el servidor no tomó: abra el cruce y guárdelo otra vez, o deje ir el cambio.`,
  trouble: {
    refused:
      'Este navegador no guarda nada: lo que abra o cambie ahora se pierde al cerrar la página. Guárdelo como archivo.',
    'no-room':
      'A este navegador ya no le queda espacio: el último cambio no queda guardado aquí. Guárdelo como archivo.',
  },
  newVersion: 'Hay una versión nueva.',
  newVersionTaken: 'Otra pestaña ya pasó a una versión nueva.',
  useNow: 'Usarla ahora',
  goingOver: 'Pasando a la versión nueva … Lo que escribió viene también.',
  demosKept: 'El servidor no contesta: cruces como los guardó este navegador.',
}
