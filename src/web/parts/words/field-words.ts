import type { Words } from "#words";

/** Fields of lines that a person filled in or chose, by their last name. */
const FIELDS = {
  answer: "fieldAnswer",
  because: "fieldBecause",
  count: "fieldCount",
  date: "fieldDate",
  day: "fieldDay",
  drawn: "fieldDrawn",
  effect: "fieldEffect",
  expected: "fieldExpected",
  exposure: "fieldExposure",
  fitted: "fieldFitted",
  from: "fieldFrom",
  how: "fieldHow",
  hours: "fieldHours",
  kit: "fieldKit",
  level: "fieldLevel",
  limit: "fieldLimit",
  lot: "fieldLot",
  name: "fieldName",
  note: "fieldNote",
  order: "fieldOrder",
  person: "fieldPerson",
  place: "fieldPlace",
  printed: "fieldPrinted",
  quantity: "fieldQuantity",
  reason: "fieldReason",
  role: "fieldRole",
  seal: "fieldSeal",
  sealReadBefore: "fieldSealReadBefore",
  sealSeen: "fieldSealSeen",
  second: "fieldSecond",
  seconds: "fieldSeconds",
  serial: "fieldSerial",
  shelves: "fieldShelves",
  space: "fieldSpace",
  strength: "fieldStrength",
  taken: "fieldTaken",
  to: "fieldTo",
  until: "fieldUntil",
  value: "fieldValue",
  week: "fieldWeek",
  why: "fieldWhy",
} as const satisfies Readonly<Record<string, keyof Words["parts"]>>;

/** Names that stand for themselves in a line, outside its body. */
const OF_LINE = /^(by|device|subject|place|kind|at|id|pattern|after|entry|turnaround|casualty|work)$/;

/**
 * What a field of a refused line or question is called on a screen; undefined where its name means nothing to a person: it
 * is then left out, with what was given there.
 * "Seal number as read" for `body.sealSeen`, nothing for `body.turnaround`, and "Suction, greatest lift" for
 * `suction.greatestLift`.
 */
export function sayField(field: string, words: Words["parts"]): string | undefined {
  const isOfLine = field.startsWith("body") || OF_LINE.test(field);
  const names = field
    .replaceAll(/\[\d+\]/g, "")
    .split(".")
    .filter((name) => name !== "body" && !/^\d*$/.test(name));
  const word = names.toReversed().flatMap((name) => (isNamed(name) ? [words[FIELDS[name]]()] : []))[0];
  if (isOfLine) return word;
  const said = names.map(apart).join(", ");
  return said === "" ? word : said.charAt(0).toUpperCase() + said.slice(1);
}

function isNamed(name: string): name is keyof typeof FIELDS {
  return Object.hasOwn(FIELDS, name);
}

function apart(name: string): string {
  return name.replaceAll(/([a-z])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}

/** What was given, as a person would say it; undefined where it is a form of the program's own. */
export function sayGiven(got: string, words: Words["parts"]): string | undefined {
  if (/^[{[]/.test(got)) return undefined;
  return words.given({ got: got.replace(/^"(.*)"$/, "$1") });
}
