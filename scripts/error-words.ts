import { parseSync } from "vite";

/** What the source says with an error code; a part that is worked out while the program runs stands as "…". */
export interface ErrorWords {
  /** What is wrong, or what is allowed. */
  readonly allowed: string;
  readonly remedy: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** The words beside each code in a file: of the object or call that names it, whichever is the closest. */
export function errorWords(path: string, text: string): ReadonlyMap<string, ErrorWords> {
  const found = new Map<string, ErrorWords>();
  const { program } = parseSync(path, text);
  const consts = constsOf(program as unknown as Node);
  walk(program as unknown as Node, [], (node, above) => {
    const code = codeOf(node);
    if (code === undefined || found.has(code) || above.at(-1)?.type === "TSLiteralType") return;
    const words = above.toReversed().map((one) => wordsOf(one, node, consts));
    const best = words.find((one) => one?.remedy) ?? words.find(Boolean);
    if (best) found.set(code, best);
  });
  return found;
}

function codeOf(node: Node): string | undefined {
  const value = node["value"];
  return node.type === "Literal" && typeof value === "string" && /^[A-Z]{2}-\d{3}$/.test(value) ? value : undefined;
}

type Consts = readonly { readonly name: string; readonly at: number; readonly value: Node }[];

function constsOf(program: Node): Consts {
  const found: { name: string; at: number; value: Node }[] = [];
  walk(program, [], (node) => {
    const id = node["id"] as Node | undefined;
    const value = node["init"] as Node | undefined;
    if (node.type === "VariableDeclarator" && value && id?.type === "Identifier")
      found.push({ name: id["name"] as string, at: node.start, value });
  });
  return found;
}

function wordsOf(node: Node, code: Node, consts: Consts): ErrorWords | undefined {
  if (node.type === "ObjectExpression") return ofObject(node, code, consts);
  if (node.type === "CallExpression" || node.type === "NewExpression") return ofCall(node, code, consts);
  return undefined;
}

function ofObject(node: Node, code: Node, consts: Consts): ErrorWords | undefined {
  const parts = node["properties"] as readonly Node[];
  const read = (name: string): string => {
    const part = parts.find((one) => (one["key"] as Node | undefined)?.["name"] === name);
    return part ? sayNode(part["value"] as Node, code.start, consts) : "";
  };
  const allowed = read("allowed") || read("message");
  const remedy = read("remedy");
  return allowed || remedy ? { allowed, remedy } : undefined;
}

/** What a call says after the code: sentences where there are some, such as what is allowed; names and units else. */
function ofCall(node: Node, code: Node, consts: Consts): ErrorWords | undefined {
  const given = node["arguments"] as readonly Node[];
  const at = given.indexOf(code);
  if (at < 0) return undefined;
  const said = given.slice(at + 1).map((one) => sayNode(one, code.start, consts));
  const remedy = said.findLast((one) => one.endsWith(".")) ?? "";
  const rest = said.filter((one) => one !== remedy && /[a-z²³]/.test(one));
  const phrases = rest.filter((one) => /[a-z]{2,} /.test(one));
  const allowed = phrases.length > 0 ? phrases.join("; ") : rest.join(", ");
  return allowed || remedy ? { allowed, remedy } : undefined;
}

function sayNode(node: Node, before: number, consts: Consts): string {
  if (node.type === "Literal") return String(node["value"]);
  if (node.type === "TemplateLiteral") return sayTemplate(node, before, consts);
  if (node.type === "BinaryExpression")
    return sayNode(node["left"] as Node, before, consts) + sayNode(node["right"] as Node, before, consts);
  if (node.type === "ConditionalExpression")
    return [node["consequent"], node["alternate"]].map((one) => sayNode(one as Node, before, consts)).join(" / ");
  if (node.type !== "Identifier") return "…";
  const named = consts.filter(({ name }) => name === node["name"]);
  const nearest = named.filter(({ at }) => at < before).at(-1) ?? named[0];
  return nearest ? sayNode(nearest.value, nearest.at, consts) : "…";
}

function sayTemplate(node: Node, before: number, consts: Consts): string {
  const texts = (node["quasis"] as readonly Node[]).map((one) => (one["value"] as { readonly cooked: string }).cooked);
  const between = (node["expressions"] as readonly Node[]).map((one) => sayNode(one, before, consts));
  return texts.map((one, at) => one + (between[at] ?? "")).join("");
}

function walk(node: Node, above: readonly Node[], visit: (node: Node, above: readonly Node[]) => void): void {
  visit(node, above);
  for (const value of Object.values(node))
    for (const one of Array.isArray(value) ? (value as unknown[]) : [value])
      if (isNode(one)) walk(one, [...above, node], visit);
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string";
}
