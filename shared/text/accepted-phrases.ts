/** Bare type names read better with an article. */
export const EN_ACCEPTED: Readonly<Record<string, string>> = {
  string: 'text',
  boolean: 'true or false',
  object: 'an object',
  array: 'a list',
  number: 'a number',
}
