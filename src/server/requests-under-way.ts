type Fetch<Env> = (request: Request, env: Env) => Response | Promise<Response>

/** Counts what is being answered, so that the store is closed only behind the last of it. */
export function requestsUnderWay<Env>(fetch: Fetch<Env>): {
  readonly fetch: (request: Request, env: Env) => Promise<Response>
  /** Settles once nothing is being answered. */
  readonly settled: () => Promise<void>
} {
  const underWay = new Set<Promise<Response>>()
  return {
    fetch: async (request, env) => {
      const answer = Promise.resolve(fetch(request, env))
      underWay.add(answer)
      try {
        return await answer
      } finally {
        underWay.delete(answer)
      }
    },
    settled: async () => {
      while (underWay.size > 0) await Promise.allSettled(underWay)
    },
  }
}
