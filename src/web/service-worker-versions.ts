/** One file of a version, as the build lists it. */
export interface Shelf {
  readonly url: string;
  /** Absent where the name itself carries the content's hash. */
  readonly revision: string | null;
}

/** Versions kept on a device beside the one shown, so that windows still open on them find their files. */
export const KEPT_VERSIONS = 2;

/** Names a version by all that is in it: FNV-1a over names and revisions, in order of name. */
export function versionOf(shelf: readonly Shelf[]): string {
  const text = shelf
    .map(({ url, revision }) => `${url} ${revision ?? ""}`)
    .sort()
    .join("\n");
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}

/** Which held versions go when a new one is shown: the oldest, beyond the few that are kept. Names come oldest first. */
export function versionsToDrop(held: readonly string[], shown: string, kept: number): readonly string[] {
  const others = held.filter((name) => name !== shown);
  return others.slice(0, Math.max(0, others.length - kept));
}
