import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    env: { TZ: 'UTC', LANG: 'C' },
    setupFiles: ['tests/support/one-seed.ts', 'tests/support/geodesic-known.ts'],
    testTimeout: 20_000,
    retry: 0,
  },
})
