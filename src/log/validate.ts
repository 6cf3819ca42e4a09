import { cutName, InputError, printGiven, type Fault } from "#base";
import { canonicalText, isWellFormed } from "./canonical.ts";
import { ENTRY_LIMITS } from "./entry-limits.ts";
import { STRIKE, type Entry } from "./entry.ts";
import { isInbornName } from "./inborn-names.ts";
import { parseInstant } from "./instant.ts";

const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const KNOWN = new Set(["id", "place", "subject", "kind", "at", "by", "device", "pattern", "after", "body"]);

interface TextRule {
  readonly name: string;
  readonly code: string;
  readonly fits: (text: string) => boolean;
  readonly allowed: string;
  readonly remedy: string;
}

const REPORT = "This is made by the app, not typed: report it with a copy of the line.";
const INBORN_REMEDY =
  "Choose another id, such as with a figure at its end: every object of the program answers to this one.";
const ID_RULE = matching("id", "LG-103", UUID_V7, "a UUID version 7 in lower case");
const AT_RULE: TextRule = {
  name: "at",
  code: "LG-107",
  fits: (text) => text.length <= 40 && parseInstant(text) !== undefined,
  allowed: "a real date and time as RFC 3339 with offset, such as 2027-03-14T09:26:53+01:00",
  remedy: "Check the device's date, time and time zone.",
};
const TEXT_RULES: readonly TextRule[] = [
  ID_RULE,
  matching("place", "LG-104", /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/, "1 to 64 letters, digits, . _ or -"),
  matching(
    "subject",
    "LG-105",
    /^[a-z][a-z-]{0,31}(?::[A-Za-z0-9][A-Za-z0-9._@-]{0,95})?$/,
    'a sort and an id, such as "kit:7f3k", at most 128 characters',
  ),
  matching("kind", "LG-106", /^[a-z][a-z0-9-]{0,63}$/, "1 to 64 lower-case letters, digits or -"),
  AT_RULE,
  matching("by", "LG-108", /^[A-Za-z0-9][A-Za-z0-9._:-]{0,95}$/, "a person id of 1 to 96 letters, digits, . _ : or -"),
  matching(
    "device",
    "LG-109",
    /^[A-Za-z0-9][A-Za-z0-9._:-]{0,95}$/,
    "a device id of 1 to 96 letters, digits, . _ : or -",
  ),
];
const PATTERN_RULE = matching(
  "pattern",
  "LG-110",
  /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}@[A-Za-z0-9][A-Za-z0-9.+-]{0,31}$/,
  'a pattern and its version, such as "harbour-pump@3"',
);

/**
 * Judges whatever arrived as an entry: shape, names, a real time, size. What `kind` and `body` mean is for the rooms
 * above; only a strike is understood here.
 *
 * @param given - anything, such as parsed JSON
 * @param field - how the person or script named it, for the faults
 * @returns the entry, with no other fields than an entry has
 * @throws InputError with every fault found, at most 20: LG-101 to LG-117
 * @example
 * const made = { at: "2027-01-02T10:00:00Z", by: "ana", device: "tablet", body: {} };
 * validateEntry({ id: "01890a5d-ac96-774b-bcce-b302099a8057", place: "north", subject: "kit:a", kind: "x", ...made }).by; // "ana"
 */
export function validateEntry(given: unknown, field = "entry"): Entry {
  if (!isRecord(given)) {
    const remedy = "Send one entry as an object with id, place, subject, kind, at, by, device and body.";
    throw new InputError([{ code: "LG-101", field, got: describeGiven(given), allowed: "an object", remedy }]);
  }
  const faults = [...judgeFields(given, field), ...judgeBody(given, field)];
  if (faults.length > 0) throw new InputError(faults.slice(0, ENTRY_LIMITS.faults));
  const entry = pickEntry(given as unknown as Entry);
  const oversize = judgeSize(entry, field);
  if (oversize.length > 0) throw new InputError(oversize);
  return entry;
}

function judgeFields(given: Record<string, unknown>, field: string): Fault[] {
  const unknown = Object.keys(given)
    .filter((name) => !KNOWN.has(name))
    .slice(0, ENTRY_LIMITS.faults)
    .map((name) =>
      faultAt(
        "LG-102",
        `${field}.${cutName(name)}`,
        given[name],
        "no such field",
        "Leave it out; what an entry says goes in body.",
      ),
    );
  const texts = TEXT_RULES.flatMap((rule) => judgeText(rule, given[rule.name], `${field}.${rule.name}`));
  const pattern = given["pattern"] === undefined ? [] : judgeText(PATTERN_RULE, given["pattern"], `${field}.pattern`);
  return [...unknown, ...texts, ...pattern, ...judgeAfter(given, `${field}.after`)];
}

function judgeBody(given: Record<string, unknown>, field: string): Fault[] {
  const at = `${field}.body`;
  const body = given["body"];
  if (body === undefined) {
    return [faultAt("LG-112", at, body, "an object, list, text or number", "Say what was seen or done.")];
  }
  const faults: Fault[] = [];
  judgeValue(body, at, 1, faults);
  return given["kind"] === STRIKE ? [...faults, ...judgeStrike(body, given["id"], at)] : faults;
}

function judgeText(rule: TextRule, given: unknown, field: string): Fault[] {
  if (typeof given === "string" && rule.fits(given)) return [];
  if (typeof given === "string" && isInbornName(bareId(given))) return [inbornFault(rule, given, field)];
  return [faultAt(rule.code, field, given, rule.allowed, rule.remedy)];
}

function inbornFault({ code, allowed }: TextRule, given: string, field: string): Fault {
  return faultAt(code, field, given, `${allowed}, but no name such as constructor or __proto__`, INBORN_REMEDY);
}

function judgeAfter(given: Record<string, unknown>, field: string): Fault[] {
  const after = given["after"];
  if (after === undefined) return [];
  if (Array.isArray(after) && after.length <= ENTRY_LIMITS.after && namesOthers(after, given["id"])) return [];
  const allowed = `at most ${ENTRY_LIMITS.after} different ids of other entries`;
  return [faultAt("LG-111", field, after, allowed, REPORT)];
}

function namesOthers(after: readonly unknown[], own: unknown): boolean {
  const fit = after.every((id) => typeof id === "string" && UUID_V7.test(id) && id !== own);
  return fit && new Set(after).size === after.length;
}

function judgeStrike(given: unknown, own: unknown, field: string): Fault[] {
  const { entry, reason } = isRecord(given) ? given : {};
  const faults: Fault[] = [];
  if (typeof entry !== "string" || !UUID_V7.test(entry) || entry === own) {
    faults.push(faultAt("LG-114", `${field}.entry`, entry, "the id of another entry", "Name the line to strike."));
  }
  if (typeof reason !== "string" || reason.trim() === "" || reason.length > ENTRY_LIMITS.reason) {
    const allowed = `1 to ${ENTRY_LIMITS.reason} characters`;
    faults.push(faultAt("LG-115", `${field}.reason`, reason, allowed, "Say why the line is struck."));
  }
  return faults;
}

/** Walks a body no deeper than allowed, so that nothing nested without end is ever written or hashed. */
function judgeValue(value: unknown, field: string, depth: number, faults: Fault[]): void {
  if (typeof value === "object" && value !== null) return judgeNested(value, field, depth, faults);
  const fits =
    value === null ||
    typeof value === "boolean" ||
    (typeof value === "string" && isWellFormed(value)) ||
    (typeof value === "number" && Number.isFinite(value));
  if (!fits) faults.push(faultAt("LG-116", field, value, "what JSON can carry, in well-formed Unicode", REPORT));
}

function judgeNested(value: object, field: string, depth: number, faults: Fault[]): void {
  if (depth > ENTRY_LIMITS.depth) {
    faults.push(
      faultAt("LG-117", field, "deeper nesting", `at most ${ENTRY_LIMITS.depth} levels`, "Say it more simply."),
    );
    return;
  }
  for (const [key, inner] of Object.entries(value)) {
    if (faults.length >= ENTRY_LIMITS.faults) return;
    if (inner === undefined && !Array.isArray(value)) continue;
    const at = Array.isArray(value) ? `${field}[${key}]` : `${field}.${cutName(key)}`;
    if (key === "__proto__" || !isWellFormed(key)) {
      faults.push(faultAt("LG-116", field, key, "names in well-formed Unicode, none of them __proto__", REPORT));
    } else judgeValue(inner, at, depth + 1, faults);
  }
}

function judgeSize(entry: Entry, field: string): Fault[] {
  const bytes = new TextEncoder().encode(canonicalText(entry)).length;
  if (bytes <= ENTRY_LIMITS.bytes) return [];
  const remedy = "Shorten the note, or write it as several lines; photos are sent beside the log.";
  return [faultAt("LG-113", field, bytes, `at most ${ENTRY_LIMITS.bytes} bytes`, remedy)];
}

function pickEntry(given: Entry): Entry {
  const { id, place, subject, kind, at, by, device, pattern, after, body } = given;
  return {
    id,
    place,
    subject,
    kind,
    at,
    by,
    device,
    ...(pattern === undefined ? {} : { pattern }),
    ...(after === undefined ? {} : { after }),
    body,
  };
}

function matching(name: string, code: string, shape: RegExp, allowed: string): TextRule {
  return { name, code, fits: (text) => shape.test(text) && !isInbornName(bareId(text)), allowed, remedy: REPORT };
}

/** What follows the sort in a subject; any other name whole. */
function bareId(text: string): string {
  return text.slice(text.indexOf(":") + 1);
}

function faultAt(code: string, field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code, field, got: describeGiven(got), allowed, remedy };
}

/** Lists and objects are only named: they may be nested deeper than anything can print. */
function describeGiven(given: unknown): string {
  if (Array.isArray(given)) return `a list of ${given.length}`;
  return typeof given === "object" && given !== null ? "an object" : printGiven(given);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
