import { plainCode } from '../../shared/text/by-system.ts'
import { FORM } from './form-words.ts'

/** What the form calls a place of the file; a list place stands as *. */
const PLACES: Readonly<Record<string, () => string>> = {
  name: () => FORM.name,
  line: () => FORM.line.heading,
  'line.length': () => FORM.line.length,
  depth: () => FORM.line.heading,
  'depth.launch': () => FORM.line.depthLaunch,
  'depth.reception': () => FORM.line.depthReception,
  'depth.to': () => FORM.line.to,
  grade: () => FORM.line.grade,
  'ends.launch': () => FORM.line.launchEnd,
  'ends.reception': () => FORM.line.receptionEnd,
  'shots.*': () => FORM.line.shot,
  over: () => FORM.over.heading,
  'over.*': () => FORM.over.reach,
  ground: () => FORM.ground.heading,
  'ground.*': () => FORM.ground.stretch,
  'ground.*.word': () => FORM.ground.word,
  'ground.*.sptN': () => FORM.ground.sptN,
  pipes: () => FORM.pipe.heading,
  'pipes.*': () => FORM.pipe.pipe,
  pull: () => FORM.pipe.pull,
  tool: () => FORM.tool.heading,
  'tool.diameter': () => FORM.tool.diameter,
  air: () => FORM.air.heading,
  'air.compressor.freeAirDelivery': () => FORM.air.delivery,
  'air.compressor.pressure': () => FORM.air.pressure,
  'air.hoses': () => FORM.air.hose,
  'air.hoses.*': () => FORM.air.hose,
  'air.hoses.*.bore': () => FORM.air.bore,
  'air.hoses.*.length': () => FORM.air.length,
  'air.altitude': () => FORM.air.altitude,
  'air.temperature': () => FORM.air.temperature,
  utilities: () => FORM.lines.heading,
  'utilities.*': () => FORM.lines.line,
  'utilities.*.station': () => FORM.lines.station,
  'utilities.*.depth': () => FORM.lines.depth,
  'utilities.*.depthTo': () => FORM.lines.depthTo,
  'utilities.*.diameter': () => FORM.lines.diameter,
  'utilities.*.evidence': () => FORM.lines.evidence,
  utilitiesAsked: () => FORM.lines.heading,
  'utilitiesAsked.by': () => FORM.lines.by,
  'utilitiesAsked.on': () => FORM.lines.on,
  'utilities.*.from': () => FORM.lines.from,
  'utilities.*.to': () => FORM.lines.to,
  'utilities.*.quality.level': () => FORM.lines.qualityLevel,
  privateLines: () => FORM.places.privateLines,
  'overhead.*': () => FORM.places.overhead,
  locate: () => FORM.places.locate,
  'locate.rulesRead.by': () => FORM.places.rulesReadBy,
  'locate.rulesRead.on': () => FORM.places.rulesReadOn,
  'locate.responses.*': () => FORM.places.response,
  rates: () => FORM.rates.heading,
  spread: () => FORM.rates.more,
}

/** A place of the file as the form calls it: 'air.hoses.1.bore' is "Hose bore (inside), 2". */
export function placeWords(path: string): string {
  const steps = path.split('.')
  const number = steps.map(Number).find((step) => Number.isInteger(step))
  for (let length = steps.length; length > 0; length--) {
    const pattern = steps.slice(0, length).map((step) => (/^\d+$/.test(step) ? '*' : step))
    const found = PLACES[pattern.join('.')]
    if (found) return number === undefined ? found() : `${found()}, ${number + 1}`
  }
  return plainCode(path)
}
