import { isInputError } from "#base";
import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { ask, exampleOf, questionNames, schemaOf } from "./ask.ts";

/*
 * Whatever is asked of whichever question: an answer of finite figures, or faults that name field, got, allowed and
 * remedy. Inputs are made from the question's own JSON Schema, and from its example with pieces spoilt; seeded.
 */

type Chance = () => number;
type Json = unknown;

interface Schema {
  readonly type?: string;
  readonly enum?: readonly Json[];
  readonly const?: Json;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly minItems?: number;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

const ODD: readonly Json[] = [
  0,
  -1,
  1e-300,
  1e300,
  "",
  "x",
  "5 cm",
  "-3 m",
  "12:60",
  "1e999 m",
  null,
  true,
  [],
  {},
  [[]],
];
const TEXTS = ["0.5 m", "40 mm", "200 L/min", "5 min", "2 h", "0.3", "15 °C", "10 kPa", "2026-03-14", "a name"];

function pick<T>(all: readonly T[], chance: Chance): T {
  return all[Math.floor(chance() * all.length)]!;
}

/** From a thousandth to a thousand, alike by ratio; now and then whole. */
function anyNumber(chance: Chance): number {
  const size = 10 ** (6 * chance() - 3);
  return chance() < 0.3 ? Math.round(size) : size;
}

const DEEPEST = 6;

function fromSchema(schema: Schema, root: Schema, chance: Chance, depth = 0): Json {
  if (chance() < 0.02 || depth > DEEPEST) return pick(ODD, chance);
  if (schema.$ref !== undefined) return fromSchema(named(schema.$ref, root), root, chance, depth + 1);
  const branches = schema.anyOf ?? schema.oneOf;
  if (branches !== undefined) return fromSchema(pick(branches, chance), root, chance, depth + 1);
  if (schema.const !== undefined) return schema.const;
  if (schema.enum !== undefined) return pick(schema.enum, chance);
  if (schema.type === "object") return objectFrom(schema, root, chance, depth);
  if (schema.type === "array") {
    const count = (schema.minItems ?? 0) + Math.floor(3 * chance());
    return Array.from({ length: count }, () => fromSchema(schema.items ?? {}, root, chance, depth + 1));
  }
  if (schema.type === "boolean") return chance() < 0.5;
  return schema.type === "string" ? pick(TEXTS, chance) : anyNumber(chance);
}

function named(ref: string, root: Schema): Schema {
  return ref === "#" ? root : (root.$defs?.[ref.replace("#/$defs/", "")] ?? {});
}

function objectFrom({ properties = {}, required = [] }: Schema, root: Schema, chance: Chance, depth: number): Json {
  const kept = Object.entries(properties).filter(([name]) => required.includes(name) || chance() < 0.35);
  return Object.fromEntries(kept.map(([name, one]) => [name, fromSchema(one, root, chance, depth + 1)]));
}

/** One leaf or branch of a value spoilt: another figure, something odd, left out, or twice. */
function spoilt(value: Json, chance: Chance): Json {
  const isBranch = typeof value === "object" && value !== null && Object.keys(value).length > 0;
  if (!isBranch || chance() < 0.1) {
    return typeof value === "number" && chance() < 0.7 ? value * 10 ** (4 * chance() - 2) : pick(ODD, chance);
  }
  const name = pick(Object.keys(value), chance);
  if (Array.isArray(value)) return spoiltList(value, Number(name), chance);
  const { [name]: part, ...rest } = value as Record<string, Json>;
  return chance() < 0.1 ? rest : { ...rest, [name]: spoilt(part, chance) };
}

function spoiltList(list: readonly Json[], at: number, chance: Chance): Json {
  const sort = chance();
  if (sort < 0.1) return list.filter((_, k) => k !== at);
  if (sort < 0.2) return [...list, list[at]];
  return list.map((one, k) => (k === at ? spoilt(one, chance) : one));
}

/** Paths of an answer at which no finite figure stands. */
function notFinite(value: Json, path = ""): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value === "string") return /\b(NaN|undefined|Infinity|\[object)/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => notFinite(one, `${path}.${name}`));
}

/** What is wrong with what came of asking; nothing as a rule. */
function wrongWith(name: string, given: Json): readonly string[] {
  try {
    return notFinite(ask(name, given));
  } catch (thrown) {
    if (!isInputError(thrown)) return [thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)];
    return thrown.faults.length === 0 ? ["no fault"] : thrown.faults.flatMap(wrongWithFault);
  }
}

function wrongWithFault(
  fault: Readonly<Record<"code" | "field" | "got" | "allowed" | "remedy", string>>,
): readonly string[] {
  const parts = [fault.code, fault.field, fault.got, fault.allowed, fault.remedy];
  const isWhole = parts.every((part) => typeof part === "string" && part.trim() !== "");
  return isWhole ? notFinite({ allowed: fault.allowed, remedy: fault.remedy }) : [JSON.stringify(fault)];
}

/** Those that take tenths of a second are asked less often. */
const DEAR = ["on-scene", "sounding", "kits-needed", "flood", "righting", "hydrostatics", "plan-year"];
const TRIES = { dear: 12, cheap: 60 };

describe("a figure that is next to nothing", () => {
  it.each([
    ["delivery-curve", { pump: { curve: [{ flow: 1e-300, head: "26 m" }] } }],
    ["delivery", { pump: { curve: [{ flow: 1e-300, head: "26 m" }] } }],
    ["prime", { lift: 1e-300 }],
    ["prime", { lift: 1e-20 }],
  ])("is none, or a fault, in %s", (name, more) => {
    expect(wrongWith(name, { ...(exampleOf(name) as object), ...more })).toEqual([]);
  });
});

describe.each(questionNames())("%s, whatever it is given", (name) => {
  const tries = DEAR.includes(name) ? TRIES.dear : TRIES.cheap;
  const find = (make: (chance: Chance) => Json): readonly string[] => {
    const chance = repeatableStream(name.length + 17);
    return Array.from({ length: tries }, () => make(chance)).flatMap((given) =>
      wrongWith(name, given).map((wrong) => `${wrong} <- ${JSON.stringify(given)}`),
    );
  };

  it("ASK-5 answers with finite figures or names its faults: from its schema", () => {
    const input = schemaOf(name).input as Schema;
    expect(find((chance) => fromSchema(input, input, chance))).toEqual([]);
  });

  it("answers with finite figures or names its faults: its example spoilt", () => {
    const example = exampleOf(name);
    expect(
      find((chance) => {
        const once = spoilt(example, chance);
        return chance() < 0.5 ? once : spoilt(once, chance);
      }),
    ).toEqual([]);
  });
});
