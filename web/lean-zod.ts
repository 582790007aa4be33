import type { Plugin } from 'vite'

/**
 * Parts of zod the page never calls: those that write JSON Schemas, for the server and the command line, and its own
 * English sentences, for ours are made by code in shared/text.
 */
const FILES = /zod\/v4\/(?:core\/(?:json-schema-processors|to-json-schema)|locales\/en)\.js$/
const NAMES = /^export (?:const|function|class) (\w+)/gm
const DEFAULT = /^export default /m

/**
 * Leaves them out of the page's first script, where they weigh as much as all of the drawing. Their names stay, each as
 * something that gives an empty answer: zod only keeps them for whoever asks a schema for its JSON Schema.
 */
export function leanZod(): Plugin {
  return {
    name: 'underlane-lean-zod',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!FILES.test(id)) return null
      const names = [...code.matchAll(NAMES)].map(([, name]) => name)
      const lines = names.map((name) => `export const ${name} = nothing`)
      if (DEFAULT.test(code)) lines.push('export default nothing')
      if (lines.length === 0) this.error(`${id} exports nothing that is known here`)
      // Called once to make a method of a schema, and a second time by who calls that method.
      return { code: `const nothing = () => nothing\n${lines.join('\n')}\n`, map: null }
    },
  }
}
