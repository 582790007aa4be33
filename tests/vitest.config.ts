import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    env: { TZ: 'UTC', LANG: 'C' },
    setupFiles: ['tests/support/one-seed.ts', 'tests/support/geodesic-known.ts'],
    // A journey through a real browser on a machine that has other work to do.
    testTimeout: 60_000,
    retry: 0,
  },
})
