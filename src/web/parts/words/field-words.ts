import type { Words } from "#words";

/** Fields of lines that a person filled in or chose, by their last name. */
const WORDS: Readonly<Record<string, string>> = {
  answer: "Answer",
  because: "Why",
  count: "Number",
  date: "Date",
  day: "Day",
  drawn: "What was drawn from the shelf",
  effect: "What it does to the kit",
  expected: "Day it is expected",
  exposure: "What it met",
  fitted: "Day it was fitted",
  from: "From",
  how: "How",
  hours: "Hours a week",
  kit: "Kit",
  level: "Level",
  limit: "Limit",
  lot: "Lot",
  name: "Name",
  note: "Note",
  order: "Order",
  person: "Person",
  place: "Place",
  printed: "Date printed on it",
  quantity: "Quantity",
  reason: "Reason",
  role: "Role",
  seal: "Seal number",
  sealReadBefore: "Seal number as read before",
  sealSeen: "Seal number as read",
  second: "Second person",
  seconds: "Time",
  serial: "Serial number",
  shelves: "Shelves",
  space: "Space",
  strength: "Strength",
  taken: "When it was seen",
  to: "To",
  until: "Until",
  value: "Reading",
  week: "Week",
  why: "Why",
};

/** Names that stand for themselves in a line, outside its body. */
const OF_LINE = /^(by|device|subject|place|kind|at|id|pattern|after|entry|turnaround|casualty|work)$/;

/**
 * What a field of a refused line or question is called on a screen; undefined where its name means nothing to a person: it
 * is then left out, with what was given there.
 *
 * @example
 * sayField("body.sealSeen"); // "Seal number as read"
 * sayField("body.turnaround"); // undefined
 * sayField("suction.greatestLift"); // "Suction, greatest lift"
 */
export function sayField(field: string): string | undefined {
  const isOfLine = field.startsWith("body") || OF_LINE.test(field);
  const names = field
    .replaceAll(/\[\d+\]/g, "")
    .split(".")
    .filter((name) => name !== "body" && !/^\d*$/.test(name));
  const word = names.toReversed().flatMap((name) => (Object.hasOwn(WORDS, name) ? [WORDS[name]] : []))[0];
  if (isOfLine) return word;
  const said = names.map(apart).join(", ");
  return said === "" ? word : said.charAt(0).toUpperCase() + said.slice(1);
}

function apart(name: string): string {
  return name.replaceAll(/([a-z])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}

/** What was given, as a person would say it; undefined where it is a form of the program's own. */
export function sayGiven(got: string, words: Words["parts"]): string | undefined {
  if (/^[{[]/.test(got)) return undefined;
  return words.given({ got: got.replace(/^"(.*)"$/, "$1") });
}
