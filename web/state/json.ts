/** JSON as a file holds it. */
export type Json = string | number | boolean | null | readonly Json[] | JsonObject
export type JsonObject = { readonly [key: string]: Json }

export const isObject = (value: Json | undefined): value is JsonObject =>
  value !== null && typeof value === 'object' && !Array.isArray(value)

export const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value)

/** Anything JSON.parse gives, as our type; null when the text is not JSON or not an object. */
export function parseObject(text: string): JsonObject | null {
  try {
    const parsed: Json = JSON.parse(text)
    return isObject(parsed) ? parsed : null
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}
