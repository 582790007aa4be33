import type { Plugin } from 'vite'

const WORKER = 'sw.js'
const PAGE = 'index.html'

type PublicFile = { readonly path: string; readonly bytes: Uint8Array }

async function shortHash(parts: readonly (string | Uint8Array)[]): Promise<string> {
  const digests = await Promise.all(
    parts.map((part) =>
      crypto.subtle.digest(
        'SHA-256',
        typeof part === 'string' ? new TextEncoder().encode(part) : new Uint8Array(part),
      ),
    ),
  )
  const whole = new Uint8Array(digests.flatMap((digest) => [...new Uint8Array(digest)]))
  const digest = await crypto.subtle.digest('SHA-256', whole)
  return [...new Uint8Array(digest).subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

/**
 * Builds the service worker beside the page and tells it what the page consists of: every file of this build, those
 * loaded later too, and the public ones. The version is a hash of all content, so a build that changes nothing asks
 * nobody to update.
 */
export function serviceWorker(source: string, publicFiles: () => readonly PublicFile[]): Plugin {
  return {
    name: 'underlane-service-worker',
    apply: 'build',
    buildStart() {
      this.emitFile({ type: 'chunk', id: source, fileName: WORKER })
    },
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const worker = bundle[WORKER]
        const page = bundle[PAGE]
        if (worker?.type !== 'chunk' || page?.type !== 'asset') this.error(`${WORKER} or ${PAGE} is missing`)
        if (worker.imports.length > 0) this.error(`${WORKER} must stand alone`)
        const html = String(page.source)
        const entry = /<script[^>]+src="([^"]+)"/.exec(html)?.[1]
        if (entry === undefined) this.error(`${PAGE} starts no script`)
        const open = publicFiles()
        // Names of built files carry a hash of their content; the page and the public files are hashed here.
        const built = Object.keys(bundle)
          .filter((name) => name !== WORKER && name !== PAGE)
          .map((name) => `/${name}`)
        const files = [...built, ...open.map(({ path }) => path)].sort()
        const version = await shortHash([html, worker.code, ...files, ...open.map(({ bytes }) => bytes)])
        worker.code = `const UNDERLANE_SHELL=${JSON.stringify({ version, entry, files })};\n${worker.code}`
      },
    },
  }
}
