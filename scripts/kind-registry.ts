import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";

/* Writes the registry of kinds of entry from the files of the kinds: src/readiness/registry, one file for each sort of subject. */

const ROOM = join(import.meta.dirname, "..", "src", "readiness");
const ENDING = ".kind.ts";

/** The file of one kind of entry. */
export interface KindFile {
  /** The kind, by which the file is named. */
  readonly kind: string;
  /** From src/readiness, with forward slashes. */
  readonly path: string;
  /** The sort of subject that it says it is about; undefined where it does not say. */
  readonly subject: string | undefined;
}

/** Every file of a kind of entry, by path. */
export function kindFiles(): readonly KindFile[] {
  const paths = readdirSync(ROOM, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile() && found.name.endsWith(ENDING))
    .map((found) => relative(ROOM, join(found.parentPath, found.name)).replaceAll("\\", "/"));
  return paths.toSorted().map((path) => {
    const subject = /^export const subject = "([a-z]+)";$/m.exec(readFileSync(join(ROOM, path), "utf8"))?.[1];
    return { kind: path.slice(path.lastIndexOf("/") + 1, -ENDING.length), path, subject };
  });
}

/** The files of the registry by name, such as "kit.ts". */
export function renderRegistry(files: readonly KindFile[]): ReadonlyMap<string, string> {
  const subjects = [...new Set(files.flatMap(({ subject }) => subject ?? []))];
  const bySubject = subjects.map((subject) => [`${subject}.ts`, render(subject, files)] as const);
  return new Map([
    ...bySubject,
    ["schemas.ts", renderTable("SCHEMAS", files, "schema")],
    ["writers.ts", renderTable("WRITERS", files, "writers")],
    ["subjects.ts", renderTable("SUBJECTS", files, "subject")],
  ]);
}

/** One table of all kinds. Each stands by itself: what only folds lines does not load the schemas. */
function renderTable(name: string, files: readonly KindFile[], part: "schema" | "subject" | "writers"): string {
  return [
    made("every kind"),
    ...files.map(importOf),
    "",
    `export const ${name} = {`,
    ...tableOf(files, part),
    "};",
    "",
  ].join("\n");
}

function made(from: string): string {
  return `/* Made by \`npx tsx scripts/kind-registry.ts\` from the files of ${from}. */`;
}

function importOf({ kind, path }: KindFile): string {
  return `import * as ${nameOf(kind)} from "../${path}";`;
}

function tableOf(files: readonly KindFile[], part: "schema" | "subject" | "writers" | "fold"): readonly string[] {
  return files.map(({ kind }) => `  ${keyOf(kind)}: ${nameOf(kind)}.${part},`);
}

function render(subject: string, files: readonly KindFile[]): string {
  const own = files.filter((file) => file.subject === subject);
  const title = subject[0]!.toUpperCase() + subject.slice(1);
  const hasFolds = subject !== "any";
  const folds = [
    `export const ${subject}Folds: FoldsOf<"${subject}", ${title}Bodies> = {`,
    ...tableOf(own, "fold"),
    "};",
  ];
  return [
    made(`kinds whose subject is "${subject}"`),
    ...(hasFolds ? ['import type { FoldsOf } from "../kinds/folds-of.ts";'] : []),
    ...own.map(importOf),
    "",
    `export interface ${title}Bodies {`,
    ...own.map(({ kind }) => `  ${keyOf(kind)}: ${nameOf(kind)}.Body;`),
    "}",
    ...(hasFolds ? ["", ...folds] : []),
    "",
  ].join("\n");
}

function keyOf(kind: string): string {
  return kind.includes("-") ? `"${kind}"` : kind;
}

function nameOf(kind: string): string {
  return kind.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

function main(): void {
  for (const [name, text] of renderRegistry(kindFiles())) {
    const path = join(ROOM, "registry", name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
