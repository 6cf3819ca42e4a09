import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

const ROOT = join(import.meta.dirname, "..", "..");

/** One numbered rule of a room. */
export interface SpecRule {
  /** Such as "LOG-3". */
  readonly id: string;
  readonly text: string;
  readonly path: string;
}

/** Every rule of every SPEC.md below src, in order. */
export function specRules(): readonly SpecRule[] {
  return filesBelow("src", /^SPEC\.md$/).flatMap((path) =>
    [...read(path).matchAll(/^- \*\*([A-Z]+-\d+)\*\* (.+(?:\n  .+)*)$/gm)].map(([, id, text]) => ({
      id: id!,
      text: text!,
      path,
    })),
  );
}

/** Ids of rules that stand in titles of tests, each with the file; `prefixes` are the letters that rules carry. */
export function idsInTitles(prefixes: readonly string[]): readonly { readonly id: string; readonly path: string }[] {
  const title = new RegExp(`\\(\\s*["'\`]((?:(?:${prefixes.join("|")})-\\d+[, ]+)+)`, "g");
  const files = [...filesBelow("src", /\.test\.tsx?$/), ...filesBelow("test", /\.ts$/)];
  return files.flatMap((path) =>
    [...read(path).matchAll(title)].flatMap(([, ids]) =>
      ids!.split(/[, ]+/).flatMap((id) => (id === "" ? [] : [{ id, path }])),
    ),
  );
}

function filesBelow(folder: string, name: RegExp): readonly string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && name.test(entry.name))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)))
    .toSorted();
}

function read(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}
