import type { KitBodies } from "#readiness";

/** How a kit goes across. */
export type HandOverMethod = KitBodies["handed-over"]["method"];

const WORDS: Readonly<Record<HandOverMethod, string>> = {
  passed: "by hand",
  line: "on a line",
  hoisted: "hoisted down",
  dropped: "dropped into the water",
  other: "another way",
};

/** All there are, the usual first. */
export const HAND_OVER_METHODS = Object.keys(WORDS) as readonly HandOverMethod[];

/** The same where a line begins with it or it is chosen: "On a line". */
export function methodChoice(method: HandOverMethod): string {
  const words = methodWords(method);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** How a kit went across: "on a line". */
export function methodWords(method: HandOverMethod): string {
  return WORDS[method];
}
