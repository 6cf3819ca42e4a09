/** Id of the part of the page a sounding is written in. */
export const SOUNDING_PLACE = "sounding";

/** The sheet of a casualty, at the place where a sounding of this space is written. */
export function soundingPath(casualty: string, space: string): string {
  return `${sheetPath(casualty, space)}#${SOUNDING_PLACE}`;
}

/** The sheet of a casualty with one of its spaces looked at. */
export function sheetPath(casualty: string, space: string): string {
  return `/casualty/${casualty}?${new URLSearchParams({ space }).toString()}`;
}

/** Brings the place into sight, where it is on the page, once the page stands. */
export function showSounding(): void {
  requestAnimationFrame(() => document.getElementById(SOUNDING_PLACE)?.scrollIntoView({ block: "center" }));
}
