import { idUses, namesIn } from "../file/file-names.ts";
import { valueAt } from "../file/file-faults.ts";
import { printPath, type FilePath } from "../file/yaml-source.ts";

/** A place in a file that names something by its id. */
export interface Use {
  readonly path: FilePath;
  /** The thing that names it, as a person knows it: "check pump-look", "step put-back". */
  readonly by: string;
}

/** What else in the file points at the block at this path, or at something in it: it would point at nothing. */
export function usesOf(value: unknown, path: FilePath): readonly Use[] {
  const isInside = (other: FilePath) => path.every((part, depth) => other[depth] === part);
  const named = Object.entries(namesIn(value)).flatMap(([what, all]) =>
    all.filter((one) => isInside(one.path)).map(({ id }) => `${what} ${id}`),
  );
  return idUses(value)
    .filter((use) => named.includes(`${use.what} ${use.id}`) && !isInside(use.path))
    .map((use) => ({ path: use.path, by: ownerOf(value, use.path) }));
}

/** The nearest thing around a path that has an id. */
function ownerOf(value: unknown, path: FilePath): string {
  for (let depth = path.length - 1; depth > 0; depth--) {
    const id = valueAt(value, [...path.slice(0, depth), "id"]);
    if (typeof id === "string") return `${SORTS[String(path[depth - 2])] ?? ""} ${id}`.trim();
  }
  return printPath(path);
}

const SORTS: Readonly<Record<string, string>> = {
  items: "item",
  modes: "mode",
  checks: "check",
  steps: "step",
  causes: "cause",
};

/** An id for a copy: as the one copied from, with the first number that is free. */
export function freeId(value: unknown, id: string): string {
  const taken = new Set(Object.values(namesIn(value)).flatMap((all) => all.map((one) => one.id)));
  const stem = id.replace(/-\d+$/, "");
  let number = 2;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
