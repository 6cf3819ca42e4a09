import { parseSync } from "oxc-parser";
import type { LiteralText } from "./literal-text.ts";

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** Two words side by side, or a word beside something that is put in. */
const WORDS = /\p{L}{2,}[,;:]? (?:\p{L}|…)|….*\p{L}{2,}.*\.$/u;
/** As a sentence, a heading or a name begins, or as a sentence ends. */
const SPEECH = /^(?:\p{Lu}|…)|\.$/u;

/**
 * Sentences, headings and names that stand in the code of a room without screens. A text counts where it has two words or
 * more and begins or ends as a sentence does; what is thrown to programmers and the types of literals do not count. A word
 * by itself, and a phrase in small letters, are not found.
 *
 * @param path - of the file, by which its language is known
 * @param source - what is in it
 */
export function spokenTexts(path: string, source: string): readonly LiteralText[] {
  const found: LiteralText[] = [];
  walk(parseSync(path, source).program, (node) => {
    const text = textOf(node)?.trim();
    if (text === undefined || !WORDS.test(text) || !SPEECH.test(text)) return;
    found.push({ line: source.slice(0, node.start).split("\n").length, text });
  });
  return found;
}

function textOf(node: Node): string | undefined {
  if (node.type === "Literal" && typeof node["value"] === "string") return node["value"];
  if (node.type !== "TemplateLiteral") return undefined;
  const quasis = node["quasis"] as readonly { readonly value: { readonly cooked: string } }[];
  return quasis.map(({ value }) => value.cooked).join("…");
}

const UNSPOKEN = new Set(["ImportDeclaration", "TSLiteralType", "ThrowStatement"]);

function walk(node: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(node)) for (const one of node) walk(one, visit);
  if (typeof node !== "object" || node === null || Array.isArray(node)) return;
  const { type } = node as Node;
  if (UNSPOKEN.has(type)) return;
  if (typeof type === "string") visit(node as Node);
  for (const value of Object.values(node)) walk(value, visit);
}
