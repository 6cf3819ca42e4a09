import { cutName, InputError, printGiven, type Fault } from "#base";
import type { z } from "zod";
import { descriptionAt, fieldsAt, wordsAt } from "./schema-path.ts";

type Path = readonly PropertyKey[];
type Issue = z.core.$ZodIssue;

/** Faults told at most: an answer must not be many times what was asked. */
const MOST_FAULTS = 50;

/**
 * What was given, as the schema turns it into SI.
 *
 * @param check - finds more, in what was given as it stands
 * @throws InputError QU-101 missing, QU-102 wrong kind of value, QU-103 unknown field, QU-104 out of limits,
 *   QU-105 not one of the allowed words, and the faults of quantity text; every fault found is in it, to so many as a person reads
 */
export function parseInput<S extends z.ZodType>(
  schema: S,
  given: unknown,
  check: (given: unknown) => readonly Fault[] = () => [],
): z.output<S> {
  const parsed = schema.safeParse(given);
  const found = check(given);
  if (parsed.success && found.length === 0) return parsed.data;
  const issues = tightest(parsed.error?.issues.slice(0, MOST_FAULTS) ?? []);
  throw new InputError([...issues.flatMap((issue) => faultsOf(issue, schema, given)), ...found]);
}

/** Of two limits of one field that were both passed, the nearer: one thing that is wrong is told once. */
function tightest(issues: readonly Issue[]): readonly Issue[] {
  const isNearer = (one: Issue, other: Issue) =>
    one.code === "too_big" &&
    other.code === "too_big" &&
    one.maximum < other.maximum &&
    pathText(one.path) === pathText(other.path);
  return issues.filter((other) => !issues.some((one) => isNearer(one, other)));
}

/** A path as people write it: "pump.curve[2].flow". */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    return text === "" ? String(step) : `${text}.${String(step)}`;
  }, "");
}

function faultsOf(issue: Issue, schema: z.ZodType, given: unknown): Fault[] {
  const field = pathText(issue.path) || "input";
  const got = valueAt(given, issue.path);
  if (issue.code === "unrecognized_keys") return unknownFields(issue.keys, issue.path, schema);
  if (issue.code === "custom") return [customFault(issue, field, got)];
  if (got === undefined) return [missing(field, issue, schema)];
  if (issue.code === "too_small" || issue.code === "too_big") return [outOfRange(issue, field, got)];
  if (issue.code === "invalid_value") return [notAllowed(issue.values, field, got)];
  if (issue.code === "invalid_union")
    return choiceFaults(issue, field, got, schema) ?? nestedFaults(issue, field, got, schema, given);
  return [wrongKind(field, got, issue, schema)];
}

/** A word that says which of several things follows, and is none of theirs. */
function choiceFaults(issue: UnionIssue, field: string, got: unknown, schema: z.ZodType): Fault[] | undefined {
  const words = issue.discriminator === undefined ? [] : wordsAt(schema, issue.path);
  if (words.length === 0) return undefined;
  return got === undefined
    ? [{ code: "QU-101", field, got: "nothing", allowed: `one of ${quoted(words)}`, remedy: `Give ${field}.` }]
    : [notAllowed(words, field, got)];
}

type UnionIssue = Extract<Issue, { code: "invalid_union" }>;

/** Faults inside the branch of a union that came nearest, or one fault for the whole value. */
function nestedFaults(issue: UnionIssue, field: string, got: unknown, schema: z.ZodType, given: unknown): Fault[] {
  const branches = issue.errors.filter((errors) => errors.every((error) => error.path.length > 0 || isOfKeys(error)));
  const nearest = branches.toSorted((one, other) => one.length - other.length)[0];
  if (!nearest || nearest.length === 0) return [wrongKind(field, got, issue, schema)];
  return nearest.flatMap((error) => faultsOf({ ...error, path: [...issue.path, ...error.path] }, schema, given));
}

function isOfKeys(issue: Issue): boolean {
  return issue.code === "unrecognized_keys";
}

function unknownFields(keys: readonly string[], path: Path, schema: z.ZodType): Fault[] {
  return keys.slice(0, MOST_FAULTS).map((key) => unknownField(cutName(key), path, schema));
}

function unknownField(key: string, path: Path, schema: z.ZodType): Fault {
  const allowed = fieldsAt(schema, path);
  if (allowed.includes(key)) return notTogether(key, path, allowed);
  const near = nearestName(key, allowed);
  return {
    code: "QU-103",
    field: pathText([...path, key]),
    got: "a field of this name",
    allowed: allowed.length === 0 ? "no further fields" : allowed.join(", "),
    remedy: near === undefined ? "Leave it out, or use one of these names." : `Did you mean "${near}"?`,
  };
}

/** A field of another way to say the same thing: one vessel is afloat or held, not both. */
function notTogether(key: string, path: Path, allowed: readonly string[]): Fault {
  const remedy = "It does not go with the other fields given: leave it out, or leave those out.";
  return {
    code: "QU-103",
    field: pathText([...path, key]),
    got: "a field of this name",
    allowed: allowed.join(", "),
    remedy,
  };
}

function missing(field: string, issue: Issue, schema: z.ZodType): Fault {
  const allowed = expectation(issue, schema);
  return { code: "QU-101", field, got: "nothing", allowed, remedy: `Give ${field}.` };
}

function wrongKind(field: string, got: unknown, issue: Issue, schema: z.ZodType): Fault {
  const allowed = expectation(issue, schema);
  return { code: "QU-102", field, got: printGiven(got), allowed, remedy: remedyOfKind(got, issue) };
}

function remedyOfKind(got: unknown, issue: Issue): string {
  if (typeof got === "number" && !Number.isFinite(got)) return "Give a finite number, or text with its unit.";
  const kinds = [...new Set(kindsIn(issue))];
  if (typeof got === "number" && kinds.includes(WHOLE)) return `Give ${WHOLE}.`;
  return kinds.length === 0 ? "Give a value of this kind." : `Give ${kinds.join(" or ")}.`;
}

/** What may stand there, in words: of a choice, each of its kinds. */
function kindsIn(issue: Issue): readonly string[] {
  if (issue.code === "invalid_union") return issue.errors.flatMap((errors) => kindsIn(withoutPath(errors)));
  return issue.code === "invalid_type" ? [KINDS[issue.expected] ?? []].flat() : [];
}

/** Of one branch, what is wrong with the value itself; none where only what is inside it is wrong. */
function withoutPath(errors: readonly Issue[]): Issue {
  return errors.find(({ path }) => path.length === 0) ?? errors[0]!;
}

const WHOLE = "a whole number";
const KINDS: Readonly<Record<string, string>> = {
  int: WHOLE,
  number: "a number",
  string: "text",
  boolean: "true or false",
  null: "null",
  array: "a list",
  object: "an object with these fields",
};

function outOfRange(issue: Extract<Issue, { code: "too_small" | "too_big" }>, field: string, got: unknown): Fault {
  const limit =
    issue.code === "too_small" ? `${leastWords(issue)} ${issue.minimum}` : `${mostWords(issue)} ${issue.maximum}`;
  const counted = countedIn(issue.origin, issue.code === "too_small" ? issue.minimum : issue.maximum);
  const allowed = `${limit}${counted}`;
  return { code: "QU-104", field, got: printGiven(got), allowed, remedy: `Give ${allowed}.` };
}

function leastWords({ inclusive }: { readonly inclusive?: boolean }): string {
  return inclusive === false ? "more than" : "at least";
}

function mostWords({ inclusive }: { readonly inclusive?: boolean }): string {
  return inclusive === false ? "less than" : "at most";
}

function countedIn(origin: string, limit: number | bigint): string {
  if (origin === "array") return Number(limit) === 1 ? " entry" : " entries";
  if (origin === "string") return Number(limit) === 1 ? " character" : " characters";
  return "";
}

function quoted(values: readonly unknown[]): string {
  return values.map((value) => printGiven(value)).join(", ");
}

function notAllowed(values: readonly unknown[], field: string, got: unknown): Fault {
  const allowed = quoted(values);
  return { code: "QU-105", field, got: printGiven(got), allowed, remedy: "Use one of these." };
}

function customFault(issue: Extract<Issue, { code: "custom" }>, field: string, got: unknown): Fault {
  const carried = issue.params?.["fault"] as Fault | undefined;
  if (carried) return { ...carried, field };
  return { code: "QU-106", field, got: printGiven(got), allowed: issue.message, remedy: "Change it to fit." };
}

function expectation(issue: Issue, schema: z.ZodType): string {
  const described = descriptionAt(schema, issue.path);
  if (described !== undefined) return described;
  const fields = fieldsAt(schema, issue.path);
  if (fields.length > 0) return `an object with ${fields.join(", ")}`;
  return issue.code === "invalid_type" ? issue.expected : issue.message;
}

function valueAt(given: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) => (typeof value === "object" && value !== null ? Reflect.get(value, step) : undefined),
    given,
  );
}

/** The allowed name that differs from this one in at most two letters, or in case only. */
function nearestName(name: string, allowed: readonly string[]): string | undefined {
  const scored = allowed.map((candidate) => ({ candidate, distance: editDistance(name.toLowerCase(), candidate) }));
  const best = scored.toSorted((one, other) => one.distance - other.distance)[0];
  return best && best.distance <= Math.max(2, Math.floor(name.length / 3)) ? best.candidate : undefined;
}

/** Levenshtein distance, capped by the shorter names this is used for. */
function editDistance(one: string, other: string): number {
  const target = other.toLowerCase();
  let row = Array.from({ length: target.length + 1 }, (_, index) => index);
  for (const [i, letter] of Array.from(one.slice(0, 40)).entries()) {
    const next = [i + 1];
    for (let j = 0; j < target.length; j += 1) {
      const replaced = row[j]! + (letter === target[j] ? 0 : 1);
      next.push(Math.min(replaced, row[j + 1]! + 1, next[j]! + 1));
    }
    row = next;
  }
  return row[target.length]!;
}
