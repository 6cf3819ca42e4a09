import { readdirSync, readFileSync } from "node:fs";
import { join, posix, relative, sep } from "node:path";
import { parseSync } from "vite";

export interface SourceFile {
  /** Path from the root, with forward slashes. */
  readonly path: string;
  readonly room: string;
  readonly text: string;
  readonly isTest: boolean;
  /** What it imports, static and dynamic, as written; `?worker` and the like left on. */
  readonly written: readonly string[];
  /** The same; a file that was named from a root stands as from this file. */
  readonly imports: readonly string[];
}

const ROOT = join(import.meta.dirname, "..", "..");

/** Every TypeScript file below src, parsed once. */
export function sourceFiles(): readonly SourceFile[] {
  return walk(join(ROOT, "src")).map(readSource);
}

function walk(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return walk(path);
    return /\.tsx?$/.test(entry.name) && !entry.name.endsWith(".d.ts") ? [path] : [];
  });
}

function readSource(file: string): SourceFile {
  const path = relative(ROOT, file).split(sep).join("/");
  const text = readFileSync(file, "utf8");
  const written = importsOf(path, text);
  const imports = written.map((name) => fromHere(path, name));
  return { path, text, room: roomOf(path), isTest: /\.test\.tsx?$|\/test-/.test(path), written, imports };
}

/** Roots that files are named from, as `imports` of package.json has them. */
const ROOTS: Readonly<Record<string, string>> = { "#web/": "src/web/", "#src/": "src/", "#test/": "test/" };

function fromHere(path: string, name: string): string {
  const root = Object.keys(ROOTS).find((one) => name.startsWith(one));
  if (root === undefined) return name;
  const there = posix.relative(posix.dirname(path), ROOTS[root]! + name.slice(root.length));
  return there.startsWith(".") ? there : `./${there}`;
}

function roomOf(path: string): string {
  const [, first, second] = path.split("/");
  return first === "store" ? `store/${second}` : first!;
}

function importsOf(path: string, text: string): string[] {
  const { module, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]!.message}`);
  const dynamic = module.dynamicImports.map((found) => text.slice(found.moduleRequest.start, found.moduleRequest.end));
  const fromExports = module.staticExports.flatMap((found) =>
    found.entries.flatMap((entry) => entry.moduleRequest?.value ?? []),
  );
  return [...module.staticImports.map((found) => found.moduleRequest.value), ...fromExports, ...dynamic.map(unquote)];
}

function unquote(text: string): string {
  return text.replace(/^["'`]|["'`]$/g, "");
}

/** The text less its comments; strings that hold "//" after a colon or quote are left alone. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|[^:"'`])\/\/.*$/gm, "$1");
}

/** What a room's door lets out: "path name", or "path *" for everything of a file. */
export function namesAtDoor(files: readonly SourceFile[], room: string): ReadonlySet<string> {
  const door = files.find((file) => file.path === `src/${room}/index.ts`);
  if (!door) throw new Error(`Room ${room} has no door.`);
  const entries = parseSync(door.path, door.text).module.staticExports.flatMap((found) => found.entries);
  return new Set(
    entries.map(({ moduleRequest, importName }) => {
      const path = `src/${room}/${(moduleRequest?.value ?? "").replace("./", "")}`;
      return `${path} ${importName.name ?? "*"}`;
    }),
  );
}
