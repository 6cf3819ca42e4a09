import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, extname, join, sep } from "node:path";
import { pathToFileURL } from "node:url";
import MessageFormat from "@messageformat/core";
import compileModule from "@messageformat/core/lib/compile-module.js";
import { parse, type Token } from "@messageformat/parser";
import { format, resolveConfig } from "prettier";
import { parse as parseYaml } from "yaml";

/*
 * Makes src/words/made from the catalogues in src/words/messages: for each group of messages its type, and for each
 * language its functions. What a language lacks does not compile. No message is parsed in the browser.
 */

const ROOM = join(import.meta.dirname, "..", "src", "words");
const MESSAGES = join(ROOM, "messages");
/** The language that the others are held against. */
const FIRST = "en";
/** Groups of the first screens. How the others are fetched is itself fetched with the first of them. */
const OF_FIRST_SCREENS = ["app", "bands", "board", "frame", "kit-line", "parts", "sign-in", "standing", "starts"];

type Catalogue = Readonly<Record<string, string>>;

/** The languages there are catalogues of, the first language first. */
export function languages(): readonly string[] {
  return readdirSync(MESSAGES).toSorted((one, other) => Number(other === FIRST) - Number(one === FIRST));
}

/** Groups of messages by folder and name, such as "frame/sign-in": a file each in every language. The name alone tells them. */
export function groups(): readonly string[] {
  const files = readdirSync(join(MESSAGES, FIRST), { recursive: true, encoding: "utf8" });
  return files
    .filter((file) => extname(file) === ".yaml")
    .map((file) => file.slice(0, -".yaml".length).replaceAll(sep, "/"))
    .toSorted((one, other) => (basename(one) < basename(other) ? -1 : 1));
}

/** The messages of one group in one language, by key. */
export function readCatalogue(language: string, group: string): Catalogue {
  return parseYaml(readFileSync(join(MESSAGES, language, `${group}.yaml`), "utf8")) as Catalogue;
}

/** The files of src/words/made by name, not yet in the project's layout. */
export function renderMessages(): ReadonlyMap<string, string> {
  const files = groups().flatMap((group) => [
    [`${group}.ts`, renderType(group)] as const,
    ...languages().map((language) => [`${language}/${group}.ts`, renderLanguage(language, group)] as const),
  ]);
  return new Map([...files, ["index.ts", renderIndex()], ["later.ts", renderLater()]]);
}

const MADE = "/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */";

function renderType(group: string): string {
  const others = languages().filter((language) => language !== FIRST);
  const catalogues = others.map((language) => readCatalogue(language, group));
  const lines = Object.entries(readCatalogue(FIRST, group)).map(([key, text]) => {
    const elsewhere = catalogues.map((catalogue) => catalogue[key] ?? "");
    return `  readonly ${key}: (${parametersOf(text, elsewhere)}) => string;`;
  });
  return [MADE, `export interface ${typeOf(group)} {`, ...lines, "}", ""].join("\n");
}

function renderLanguage(language: string, group: string): string {
  const formatter = new MessageFormat(language, { biDiSupport: false, strict: true });
  const compiled = compileModule(formatter, { ...readCatalogue(language, group) });
  const type = typeOf(group);
  return [
    MADE,
    `import type { ${type} } from "#src/words/made/${group}.ts";`,
    compiled
      .replace('from "@messageformat/runtime";', 'from "#src/words/cases.ts";')
      .replace("export default {", `const words: ${type} = {`),
    "export default words;",
    "",
  ].join("\n");
}

/** All groups by the name that the code knows them by, and how those of the first screens are fetched. */
function renderIndex(): string {
  const types = groups().map((group) => `import type { ${typeOf(group)} } from "./${group}.ts";`);
  const fields = groups().map((group) => `  readonly ${nameOf(group)}: ${typeOf(group)};`);
  const first = groups().filter((group) => OF_FIRST_SCREENS.includes(basename(group)));
  return [MADE, ...types, "", "export interface Words {", ...fields, "}", "", ...renderLoaders("FIRST", first)].join(
    "\n",
  );
}

/** How the other groups are fetched: a line for each in every language, which no first screen has to carry. */
function renderLater(): string {
  const later = groups().filter((group) => !OF_FIRST_SCREENS.includes(basename(group)));
  return [MADE, ...renderLoaders("LATER", later)].join("\n");
}

function renderLoaders(name: string, some: readonly string[]): readonly string[] {
  const loaders = languages().flatMap((language) => [
    `  ${language}: {`,
    ...some.map((group) => `    ${nameOf(group)}: () => import("./${language}/${group}.ts"),`),
    "  },",
  ]);
  return [`export const ${name}_LOADERS = {`, ...loaders, "};", ""];
}

/**
 * "d: { readonly count: number; readonly since: string }", or nothing where the message takes nothing. What another
 * language counts is a number, though the first may only show it.
 */
function parametersOf(text: string, elsewhere: readonly string[]): string {
  const found = new Map<string, string>();
  collect(parse(text), found);
  const known = new Set(found.keys());
  for (const other of elsewhere) collect(parse(other), found);
  for (const name of found.keys()) if (!known.has(name)) found.delete(name);
  if (found.size === 0) return "";
  return `d: { ${[...found].map(([name, type]) => `readonly ${name}: ${type}`).join("; ")} }`;
}

function collect(tokens: readonly Token[], found: Map<string, string>): void {
  for (const token of tokens) {
    if (token.type === "argument") found.set(token.arg, found.get(token.arg) ?? "string | number");
    if (token.type === "function") found.set(token.arg, token.key === "number" ? "number" : "string | number");
    if (token.type === "plural" || token.type === "selectordinal") found.set(token.arg, "number");
    if (token.type === "select") found.set(token.arg, choicesOf(token.cases));
    if ("cases" in token) for (const one of token.cases) collect(one.tokens, found);
  }
}

function choicesOf(cases: readonly { readonly key: string }[]): string {
  return cases.map(({ key }) => (key === "other" ? "(string & {})" : JSON.stringify(key))).join(" | ");
}

function nameOf(group: string): string {
  return basename(group).replaceAll(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

function typeOf(group: string): string {
  const name = nameOf(group);
  return `${name[0]!.toUpperCase()}${name.slice(1)}Words`;
}

/** A file as the project lays files out. */
export async function laidOut(path: string, text: string): Promise<string> {
  return format(text, { ...(await resolveConfig(path)), filepath: path });
}

/** Where a file made here stands. */
export function madeAt(file: string): string {
  return join(ROOM, "made", file);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const [file, text] of renderMessages()) {
    mkdirSync(dirname(madeAt(file)), { recursive: true });
    writeFileSync(madeAt(file), await laidOut(madeAt(file), text));
  }
}
