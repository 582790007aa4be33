import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import preact from '@preact/preset-vite'
import { defineConfig } from 'vite'
import { leanZod } from './lean-zod.ts'
import { plainImports } from './plain-imports.ts'
import { serviceWorker } from './sw-plugin.ts'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const PUBLIC = here('public')
const publicFiles = () =>
  readdirSync(PUBLIC).map((name) => ({ path: `/${name}`, bytes: readFileSync(join(PUBLIC, name)) }))

export default defineConfig({
  root: here('.'),
  plugins: [
    leanZod(),
    plainImports(),
    preact(),
    serviceWorker(here('offline/service-worker.ts'), publicFiles),
  ],
  build: {
    outDir: here('../dist/web'),
    emptyOutDir: true,
    target: 'es2022',
    // Everything with a hash in its name lies in assets/ and is served as never changing; nothing is inlined as data:,
    // which the page's security policy would refuse for scripts and styles.
    assetsInlineLimit: 0,
    // All styles, 11 kB, in one file: parts that come later appear in their own style at once.
    cssCodeSplit: false,
    // What the first script stands on is fetched beside it; late parts are plain imports and name nothing.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, parts, { hostType }) => (hostType === 'html' ? parts : []),
    },
  },
  // While developing, the API is the one of `npm start`.
  server: { proxy: { '/api': `http://127.0.0.1:${process.env.PORT ?? 4270}` } },
})
