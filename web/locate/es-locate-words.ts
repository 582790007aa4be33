import type { EN_LOCATE } from './locate-words.ts'

export const ES_LOCATE: typeof EN_LOCATE = {
  heading: (place: string) => `Reglas de marcado: ${place}`,
  notBefore: (date: string) => `No antes de ${date}. Revise su boleto.`,
  noClock: 'Aquí la ley no pone plazo: pida planos a cada dueño y espere los de todos.',
  tooOld:
    'Estas reglas se revisaron más de doce meses antes del aviso: no se calcula fecha. Guíese por su boleto.',
  noMeeting:
    'No se sabe aquí qué hace con el inicio una reunión en el sitio: no se calcula fecha. Guíese por su boleto.',
  callFirst: 'Anote cuándo se llamó y se calcula el primer inicio posible.',
  marksDue: (date: string) => `Los operadores deben haber marcado para ${date}.`,
  runsOut: (date: string) => `Vence hacia ${date}; revise su boleto.`,
  runsOutUnknown: (date: string) =>
    `No se sabe aquí cuánto dura un boleto: cuente con ${date}; revise su boleto.`,
  open: 'El boleto sigue abierto mientras sigan el trabajo y su alcance y se vean las marcas.',
  renewBy: (date: string) => `Renueve antes de ${date}; revise su boleto.`,
  beginBy: (date: string) => `Empiece antes de ${date} o llame otra vez; revise su boleto.`,
  ticketEarlier:
    'El boleto empieza antes de lo que dicen estas reglas. Cuenta el boleto; pregunte al centro si se copió bien.',
  zone: (distance: string) =>
    `Solo a mano o con vacío a menos de ${distance} a cada lado de una línea, medido en plano. No dice nada de la profundidad.`,
  zoneUnknown: (distance: string) =>
    `La zona la pone cada dueño; cuente con ${distance} a cada lado hasta que lo digan.`,
  calendar: 'Renovaciones para su calendario (.ics)',
  renewEvent: (name: string) => `Renovar boleto de marcado: ${name}`,
  expireEvent: (name: string) => `Vence boleto de marcado: ${name}`,
  fromTicket: 'Del boleto impreso.',
  workedOut: 'Calculado, no del boleto: revise su boleto.',
  more: 'Las reglas en palabras y de dónde vienen',
  rows: {
    notice: 'Aviso',
    life: 'Duración',
    renewal: 'Renovación',
    zone: 'Zona',
    handDig: 'Excavar a mano',
    trenchless: 'Trabajo sin zanja',
    response: 'Respuestas de operadores',
    holidays: 'Días feriados',
    notes: 'Nota',
  },
  trenchlessNotRead:
    'No se leyó qué dice el texto de perforar sin zanja. Diga igual en el boleto «sin zanja, topo neumático», para que marquen los drenajes.',
  checkedOn: (date: string, confidence: string) =>
    `Revisado el ${date} en copias guardadas, no contra la ley vigente. Confianza: ${confidence}.`,
  changing: 'Este lugar cambió sus reglas hace poco o está por cambiarlas: búsquelas otra vez.',
  fromMemory: (what: string) => `De memoria, sin fuente leída: ${what}.`,
  parts: {
    notice: 'aviso',
    life: 'duración',
    renewal: 'renovación',
    zone: 'zona',
    handDig: 'excavar a mano',
    trenchless: 'trabajo sin zanja',
    response: 'respuestas',
    holidays: 'feriados',
    notes: 'nota',
    opens: 'hora de apertura',
    sources: 'cita',
  },
  confidence: { high: 'alta', medium: 'media', low: 'baja' },
  sources: 'Fuentes',
  editedBy: (by: string, on: string) => `Cambiado para esta empresa por ${by} el ${on}`,
  edit: {
    heading: 'Corregir estas reglas para su empresa',
    by: 'Su nombre',
    why: 'Por qué y dónde lo leyó',
    holidays: 'Más feriados (2026-03-04, 2026-04-03)',
    family: 'Se cuenta como',
    families: {
      'full-days': 'días hábiles completos y el siguiente',
      'nth-day': 'en el enésimo día hábil',
      'from-next-opening': 'días hábiles desde la siguiente apertura',
      'clock-hours': 'horas de reloj sin feriados',
    },
    count: 'Cuántos',
    lifeDays: 'Duración en días de calendario',
    zone: 'Zona a cada lado',
    checkedOn: 'Fuentes leídas otra vez el',
    save: 'Guardar para toda la empresa',
    saved: 'Guardado.',
    refused: 'No se guardó: revise los campos o entre como dueño.',
    noServer: 'El servidor no responde: no se guardó.',
  },
  owner: (count: number) =>
    count === 0
      ? 'Todos los dueños de la lista contestaron.'
      : `Sin respuesta: ${count}. Sin respuesta es alto.`,
}
