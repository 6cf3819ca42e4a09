import { transform } from "esbuild";
import { parseSync } from "vite";
import type { SourceFile } from "./source-files.ts";

/** One `@example` of a doc comment. */
export interface Example {
  readonly path: string;
  readonly text: string;
}

/** The examples of a file's doc comments, as they are written. */
export function examplesOf({ path, text }: SourceFile): readonly Example[] {
  const comments = [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].map(([comment]) => comment.replace(/\*\/$/, ""));
  const written = comments.flatMap((comment) => [...comment.matchAll(/@example\b([\s\S]*?)(?=\n\s*\*\s*@|$)/g)]);
  return written.map((match) => ({ path, text: match[1]!.replace(/\n\s*\* ?/g, "\n").trim() }));
}

/** What an example says that it gives: what stands after its last `//`. */
export function expectedOf({ text }: Example): string | undefined {
  return /\/\/ ([^\n]*)$/.exec(text)?.[1];
}

/** What an example gives. @param names - what it may use without naming where from */
export async function runExample({ text }: Example, names: Readonly<Record<string, unknown>>): Promise<unknown> {
  const code = text.replace(/;?\s*\/\/ [^\n]*$/, "");
  const { program, errors } = parseSync("example.ts", code);
  if (errors.length > 0) throw new Error(`${errors[0]!.message}: ${code}`);
  const last = program.body.at(-1)!;
  const value = code.slice(last.start, last.end).replace(/;$/, "");
  const body = `${code.slice(0, last.start)}\nreturn ${value};`;
  const made = await transform(`function example() {${body}}`, { loader: "ts" });
  const make = new Function(...Object.keys(names), `${made.code}; return example;`) as (
    ...of: unknown[]
  ) => () => unknown;
  return make(...Object.values(names))();
}

/**
 * In what a value is not what an example says; undefined where it is. A number is held to the figures that are written;
 * "..." after a number means cut off, not rounded, and in an object or a list that there is more.
 */
export function differs(value: unknown, expected: string): string | undefined {
  const hasMore = /\.\.\.\s*[}\]]/.test(expected);
  const isCut = /\d\.\.\./.test(expected);
  const literal = expected.replace(/^≈\s*/, "").replace(/,?\s*\.\.\./g, "");
  const { program, errors } = parseSync("expected.ts", `(${literal})`);
  if (errors.length > 0) return `"${expected}" is no value`;
  const [statement] = program.body;
  if (statement?.type !== "ExpressionStatement") return `"${expected}" is no value`;
  return new Comparison(hasMore, isCut).of(value, statement.expression as unknown as Node, "");
}

interface Node {
  readonly type: string;
  readonly raw?: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly expression?: Node;
  readonly argument?: Node;
  readonly elements?: readonly Node[];
  readonly properties?: readonly { readonly key: Node; readonly value: Node }[];
}

class Comparison {
  readonly #hasMore: boolean;
  readonly #isCut: boolean;

  constructor(hasMore: boolean, isCut: boolean) {
    this.#hasMore = hasMore;
    this.#isCut = isCut;
  }

  of(value: unknown, node: Node, where: string): string | undefined {
    if (node.type === "ParenthesizedExpression") return this.of(value, node.expression!, where);
    if (node.type === "ObjectExpression") return this.#object(value, node.properties!, where);
    if (node.type === "ArrayExpression") return this.#list(value, node.elements!, where);
    if (node.type === "UnaryExpression") return this.#number(value, `-${node.argument!.raw}`, where);
    if (typeof node.value === "number") return this.#number(value, node.raw!, where);
    const wanted = node.type === "Identifier" && node.name === "undefined" ? undefined : node.value;
    return (typeof value === "string" ? value.replaceAll("\u00a0", " ") : value) === wanted
      ? undefined
      : `${where}: ${print(value)} is not ${print(wanted)}`;
  }

  #number(value: unknown, written: string, where: string): string | undefined {
    if (typeof value !== "number") return `${where}: ${print(value)} is no number`;
    const unit = unitOfLastFigure(written);
    const most = (this.#isCut ? 1 : 0.5) * unit * (1 + 1e-9) + 1e-15;
    return Math.abs(value - Number(written.replaceAll("_", ""))) <= most
      ? undefined
      : `${where}: ${value}, not ${written}`;
  }

  #object(value: unknown, properties: NonNullable<Node["properties"]>, where: string): string | undefined {
    if (typeof value !== "object" || value === null) return `${where}: ${print(value)} is no object`;
    const names = properties.map(({ key }) => key.name ?? String(key.value));
    const more = Object.keys(value).filter((name) => !names.includes(name));
    if (!this.#hasMore && more.length > 0) return `${where}: has ${more.join(", ")} as well`;
    const given = value as Readonly<Record<string, unknown>>;
    return properties
      .map(({ value: node }, at) => this.of(given[names[at]!], node, `${where}.${names[at]}`))
      .find(Boolean);
  }

  #list(value: unknown, elements: readonly Node[], where: string): string | undefined {
    if (!Array.isArray(value) && !ArrayBuffer.isView(value)) return `${where}: ${print(value)} is no list`;
    const given = Array.from(value as ArrayLike<unknown>);
    if (!this.#hasMore && given.length !== elements.length) return `${where}: ${given.length} of ${elements.length}`;
    return elements.map((node, at) => this.of(given[at], node, `${where}[${at}]`)).find(Boolean);
  }
}

function unitOfLastFigure(written: string): number {
  const [figures, exponent = "0"] = written.toLowerCase().replaceAll("_", "").split("e") as [string, string?];
  const decimals = figures.split(".")[1]?.length ?? 0;
  return 10 ** (Number(exponent) - decimals);
}

function print(value: unknown): string {
  return JSON.stringify(value) ?? String(value);
}
