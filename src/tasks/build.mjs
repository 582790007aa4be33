// npm run build: the pages to dist/web, the server to dist/server.mjs, the command line to dist/cli.mjs.
import { existsSync, mkdirSync, renameSync, rmSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { bundle } from './bundle.mjs'
import { isStale, SOURCES } from './freshness.mjs'
import { ROOT, requireNode } from './project.mjs'

/** The page's own file stands for the whole folder when ages are compared. */
const WEB_PAGE = 'dist/web/index.html'

async function buildWeb() {
  // A test runner's own NODE_ENV would bring the pages' development modules into what users get.
  process.env.NODE_ENV = 'production'
  const { build } = await import('vite')
  const started = new Date()
  const target = join(ROOT, 'dist/web')
  const temporary = join(ROOT, `dist/web.${process.pid}.part`)
  const former = join(ROOT, `dist/web.${process.pid}.old`)
  mkdirSync(join(ROOT, 'dist'), { recursive: true })
  try {
    await build({
      configFile: join(ROOT, 'web/vite.config.ts'),
      logLevel: 'warn',
      build: { outDir: temporary, emptyOutDir: true },
    })
    utimesSync(join(temporary, 'index.html'), started, started)
    if (existsSync(target)) renameSync(target, former)
    renameSync(temporary, target)
  } finally {
    rmSync(temporary, { recursive: true, force: true })
    rmSync(former, { recursive: true, force: true })
  }
}

const PARTS = [
  { output: WEB_PAGE, sources: SOURCES.web, make: buildWeb },
  {
    output: 'dist/server.mjs',
    sources: SOURCES.program,
    make: () => bundle('src/server/main.ts', 'dist/server.mjs'),
  },
  { output: 'dist/cli.mjs', sources: SOURCES.program, make: () => bundle('src/cli/main.ts', 'dist/cli.mjs') },
]

/** Builds every part, or only those older than their sources. */
export async function buildAll({ onlyStale }) {
  const wanted = onlyStale ? PARTS.filter((part) => isStale(part.output, part.sources)) : PARTS
  if (wanted.length > 0) process.stderr.write('Building …\n')
  for (const part of wanted) await part.make()
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  requireNode()
  await buildAll({ onlyStale: false })
}
