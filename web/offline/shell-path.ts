/** Kept under the address a browser starts at; every place of the page is found by the page itself. */
export const PAGE = '/'

/** The server's own ground: answers there change, and a kept one would be passed off as fresh. */
const SERVERS_OWN = /^\/api(\/|$)/
const LOOKS_LIKE_FILE = /\.[a-z0-9]{1,11}$/i
/** A name there carries a hash of its content, so whichever version kept it, it is the right one. */
const HASHED = '/assets/'

/** Which kept file answers a request of this page for `path`; null leaves the request to the network. */
export function shellPath(
  path: string,
  { isNavigation, files }: { readonly isNavigation: boolean; readonly files: readonly string[] },
): string | null {
  if (SERVERS_OWN.test(path)) return null
  if (path.startsWith(HASHED) || files.includes(path)) return path
  return isNavigation && !LOOKS_LIKE_FILE.test(path) ? PAGE : null
}
