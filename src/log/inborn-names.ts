const INBORN: ReadonlySet<string> = new Set(Object.getOwnPropertyNames(Object.prototype));

/**
 * True for a name that every JavaScript object answers to, such as "constructor". None of them may be an id: states
 * are looked up by id, and such a one would be found where nothing was ever put.
 *
 * @example isInbornName("toString"); // true
 */
export function isInbornName(name: string): boolean {
  return INBORN.has(name);
}
