import { parseSync } from "oxc-parser";

/** Attributes of our own parts and of elements that hold text for people. */
const SPOKEN = new Set(
  "alt aria-label ariaLabel caller caption confirm description face fault head hint label note placeholder summary title words".split(
    " ",
  ),
);

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** A text for people that stands in the code of a screen. */
export interface LiteralText {
  readonly line: number;
  readonly text: string;
}

/**
 * Texts between tags, and in attributes that hold text for people, which stand in the code of a screen and not in a
 * catalogue.
 *
 * @param path - of the file, by which its language is known
 * @param source - what is in it
 */
export function literalTexts(path: string, source: string): readonly LiteralText[] {
  const found: { readonly start: number; readonly text: string }[] = [];
  walk(parseSync(path, source).program, (node) => {
    const spoken = node.type === "JSXAttribute" && SPOKEN.has(nameOf(node)) ? [node["value"]] : node["children"];
    for (const one of Array.isArray(spoken) ? (spoken as readonly Node[]) : [])
      for (const text of textsOf(one).filter(isForPeople)) found.push({ start: one.start, text: text.trim() });
  });
  return found
    .toSorted((one, other) => one.start - other.start)
    .map(({ start, text }) => ({ line: source.slice(0, start).split("\n").length, text }));
}

function nameOf(attribute: Node): string {
  return String((attribute["name"] as Node)["name"]);
}

/** The texts that an expression may come to: by itself, or by choice. */
function textsOf(node: Node | null): readonly string[] {
  if (!node) return [];
  if (node.type === "JSXText") return [node["value"] as string];
  if (node.type === "JSXExpressionContainer") return textsOf(node["expression"] as Node);
  if (node.type === "Literal" && typeof node["value"] === "string") return [node["value"]];
  if (node.type === "TemplateLiteral") return [quasisOf(node)];
  if (node.type === "ConditionalExpression")
    return [...textsOf(node["consequent"] as Node), ...textsOf(node["alternate"] as Node)];
  if (node.type === "LogicalExpression") return [...textsOf(node["left"] as Node), ...textsOf(node["right"] as Node)];
  return [];
}

function quasisOf(template: Node): string {
  const quasis = template["quasis"] as readonly { readonly value: { readonly cooked: string } }[];
  return quasis.map(({ value }) => value.cooked).join(" ");
}

/** What has a word in it. The project's own name is the same in every language. */
function isForPeople(text: string): boolean {
  return /\p{L}{2}/u.test(text.replaceAll("Drykeel", ""));
}

function walk(node: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(node)) for (const one of node) walk(one, visit);
  if (typeof node !== "object" || node === null || Array.isArray(node)) return;
  if (typeof (node as Node).type === "string") visit(node as Node);
  for (const value of Object.values(node)) walk(value, visit);
}
