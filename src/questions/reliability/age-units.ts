import { printGiven, type Fault } from "#base";

/** An age as it was given, and where. */
interface GivenAge {
  readonly field: string;
  readonly age: unknown;
}

/** Fields of `lifetimes` that are ages; `b` is the time of a prior. */
const AGES: ReadonlySet<string> = new Set([
  "failedAt",
  "goodAt",
  "after",
  "before",
  "renewedAt",
  "until",
  "from",
  "to",
  "b",
]);

/** Whether any age was text with its unit: those are turned into seconds. Names of groups and things are no ages. */
export function isTextAge(given: unknown): boolean {
  return agesIn(given).some(({ age }) => typeof age === "string");
}

/** The first bare number among ages in text: it would be read in seconds, which nobody means. Nothing is nothing in any unit. */
export function checkAgeUnits(given: unknown): readonly Fault[] {
  if (!isTextAge(given)) return [];
  const bare = agesIn(given).find(({ age }) => typeof age === "number" && age !== 0);
  return bare ? [{ ...MIXED, field: bare.field, got: printGiven(bare.age) }] : [];
}

function agesIn(given: unknown, field = "", isAge = false): readonly GivenAge[] {
  if (Array.isArray(given)) return given.flatMap((one, i) => agesIn(one, `${field}[${i}]`, isAge));
  if (typeof given !== "object" || given === null) return isAge ? [{ field, age: given }] : [];
  const inside = (key: string) => (field === "" ? key : `${field}.${key}`);
  return Object.entries(given).flatMap(([key, value]) => agesIn(value, inside(key), AGES.has(key)));
}

const MIXED = {
  code: "QU-225",
  allowed: "all ages with their unit, or all bare numbers",
  remedy: 'A bare number beside ages in text would be read in seconds: write its unit too, as in "10 months".',
};
