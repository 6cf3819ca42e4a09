/**
 * What a text of JSON holds, for whoever tells by its shape what is wrong with it.
 *
 * @returns undefined for what is no JSON, which no JSON is
 * @example parsedJson("{") // undefined
 */
export function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    if (cause instanceof SyntaxError) return undefined;
    throw cause;
  }
}
