import type { Plugin } from 'vite'

/**
 * What vite puts around every late part to fetch its styles and what it depends on. Our styles are one file, and the
 * service worker holds every part already: a plain import does it.
 */
export const plainImports = (): Plugin => ({
  name: 'underlane-plain-imports',
  apply: 'build',
  enforce: 'pre',
  load: (id) => (id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load()' : null),
})
