import { InputError, printGiven, type Fault } from "#base";
import { isMap, isNode, isPair, isScalar, isSeq, LineCounter, parseDocument, type Document } from "yaml";

/** Where in a file something stands; line and column count from 1. */
export interface FilePosition {
  readonly line: number;
  readonly column: number;
}

export type FilePath = readonly (string | number)[];

/** A YAML file read but not yet judged: its plain values, and where each of them stands. */
export interface YamlSource {
  readonly fileName: string;
  readonly value: unknown;
  /** Where the thing at this path stands, or the nearest thing above it that is there. */
  readonly positionOf: (path: FilePath) => FilePosition;
}

const MOST_CHARACTERS = 512 * 1024;

/**
 * Reads YAML text.
 *
 * @throws InputError KI-100 text too long, KI-101 broken YAML: every fault, with line and column
 */
export function readYaml(text: string, fileName: string): YamlSource {
  return readDocument(text, fileName).source;
}

/** As {@link readYaml}, with the document that knows where everything stands in the text. */
export function readDocument(
  text: string,
  fileName: string,
): { readonly source: YamlSource; readonly document: Document } {
  if (text.length > MOST_CHARACTERS) throw new InputError([tooLong(text, fileName)]);
  const lines = new LineCounter();
  const document = parse(text, lines, fileName);
  const broken = document.errors.map((error) => brokenAt(fileName, lines, error.pos[0], error.message));
  if (broken.length > 0) throw new InputError(broken);
  const positionOf = (path: FilePath) => position(lines, offsetOf(document, path));
  return { source: { fileName, value: plainValue(document, fileName), positionOf }, document };
}

/** A field's name in a fault: file, line and column, then the path. */
export function fieldName(source: Pick<YamlSource, "fileName" | "positionOf">, path: FilePath): string {
  const at = source.positionOf(path);
  return `${source.fileName}:${at.line}:${at.column} ${printPath(path)}`.trimEnd();
}

/** A path as a person writes it: items[3].life. */
export function printPath(path: FilePath): string {
  return path.map((part, index) => (typeof part === "number" ? `[${part}]` : index === 0 ? part : `.${part}`)).join("");
}

// The parser is recursive: text nested without end exhausts its stack, and that too is broken YAML.
function parse(text: string, lines: LineCounter, fileName: string): Document {
  try {
    const quiet = { prettyErrors: false, logLevel: "error", stringKeys: true } as const;
    return parseDocument(text, { ...quiet, lineCounter: lines, keepSourceTokens: true });
  } catch (thrown) {
    throw new InputError([brokenAt(fileName, lines, 0, messageOf(thrown))]);
  }
}

function plainValue(document: Document, fileName: string): unknown {
  try {
    return document.toJS({ maxAliasCount: 100 });
  } catch (thrown) {
    throw new InputError([brokenAt(fileName, undefined, 0, messageOf(thrown))]);
  }
}

function messageOf(thrown: unknown): string {
  return thrown instanceof Error ? thrown.message : String(thrown);
}

function position(lines: LineCounter | undefined, offset: number): FilePosition {
  const { line, col } = lines?.linePos(offset) ?? { line: 1, col: 1 };
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

function offsetOf(document: Document, path: FilePath): number {
  let node: unknown = document.contents;
  let offset = isNode(node) ? (node.range?.[0] ?? 0) : 0;
  for (const part of path) {
    const [next, at] = childOf(node, part);
    if (at === undefined) return offset;
    offset = at;
    node = next;
  }
  return offset;
}

/** A child and its offset: in a map that of its key, in a list its own. */
function childOf(node: unknown, part: string | number): readonly [unknown, number | undefined] {
  if (isSeq(node)) {
    const child = node.items[Number(part)];
    return [child, isNode(child) ? child.range?.[0] : undefined];
  }
  if (!isMap(node)) return [undefined, undefined];
  const pair = node.items.find((one) => isPair(one) && isScalar(one.key) && String(one.key.value) === String(part));
  return [pair?.value, isScalar(pair?.key) ? pair.key.range?.[0] : undefined];
}

function brokenAt(fileName: string, lines: LineCounter | undefined, offset: number, message: string): Fault {
  const at = position(lines, offset);
  return {
    code: "KI-101",
    field: `${fileName}:${at.line}:${at.column}`,
    got: printGiven(message),
    allowed: "YAML 1.2, one document, each key once",
    remedy: "Mend the text there: look at the indentation, quotes and colons of this line and the one before.",
  };
}

function tooLong(text: string, fileName: string): Fault {
  return {
    code: "KI-100",
    field: fileName,
    got: `${text.length} characters`,
    allowed: `at most ${MOST_CHARACTERS} characters`,
    remedy: "This is not a pattern file; choose another.",
  };
}
