import type { Plugin } from 'vite'

/** Parts of zod that write JSON Schemas: the server and the command line need them, the page never does. */
const FILES = /zod\/v4\/core\/(?:json-schema-processors|to-json-schema)\.js$/
const NAMES = /^export (?:const|function|class) (\w+)/gm

/**
 * Leaves them out of the page's first script, where they weigh as much as all of the drawing. Their names stay, each as
 * something that gives an empty answer: zod only keeps them for whoever asks a schema for its JSON Schema.
 */
export function noJsonSchemas(): Plugin {
  return {
    name: 'underlane-no-json-schemas',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!FILES.test(id)) return null
      const names = [...code.matchAll(NAMES)].map(([, name]) => name)
      if (names.length === 0) this.error(`${id} exports nothing that is known here`)
      const lines = names.map((name) => `export const ${name} = nothing`)
      // Called once to make a method of a schema, and a second time by who calls that method.
      return { code: `const nothing = () => nothing\n${lines.join('\n')}\n`, map: null }
    },
  }
}
