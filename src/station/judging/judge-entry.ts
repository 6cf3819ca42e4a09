import type { Fault } from "#base";
import type { Pattern } from "#kit";
import { STATION_PLACE, STRIKE, type Entry, type StrikeBody } from "#log";
import {
  isCasualtyKind,
  isEntryKind,
  isStockKind,
  judgeBody,
  subjectOfKind,
  type Bodies,
  type EntryKind,
  type Role,
} from "#readiness";
import { judgeAnswers } from "./answers-arrived.ts";
import { because, mayNotStrike, noSuchPattern, noSuchPlace, notNamed, roleMayNot, secondIsDoer } from "./faults.ts";
import { judgeTaken } from "../acts/casualty-soundings.ts";
import { openingFaults } from "../opening-interval/longest.ts";
import { judgeEffect, judgeTakenOut, patternsToJudgeBy } from "../acts/finding-effect.ts";
import { isKeeper, mayWrite, WRITING } from "./permission.ts";

/** What the server knows when an entry arrives; also of what came earlier in the same push. */
export interface EntryFacts {
  /** Who is signed in, and on which device. */
  readonly person: string;
  readonly role: Role;
  readonly device: string;
  /** True for a place of the station, open or closed. */
  hasPlace(id: string): boolean;
  /** True for a pattern the station has, by "id@version". */
  hasPattern(version: string): boolean;
  /** The pattern "id@version", where the station has it. */
  patternNamed?(version: string): Pattern | undefined;
  /** Every version of every pattern that the station has. */
  allPatterns?(): readonly Pattern[];
  /** "id@version" of every pattern that the kit of this subject was ever built to. */
  builtTo?(subject: string): readonly string[];
  /** The entry with this id, if it is kept. */
  find(id: string): Entry | undefined;
}

/** Sorts of subject whose lines are the work itself: anyone's slip there is struck, and the strike of it too. */
const WORKED_ON: ReadonlySet<string> = new Set(["kit", "casualty", "pattern", "part", "visit"]);

/**
 * Judges an entry whose envelope is sound: a known kind with a body of its shape, made by the person signed in on this
 * device, of a kind that the role may write, about the right sort of subject, at a place that exists.
 *
 * @param entry - the entry
 * @param facts - who pushes it, and what the station has
 * @returns every fault: SN-101 other person, SN-102 other device, SN-103 role, SN-104 place, SN-105 subject, SN-106 strike,
 *   SN-107 living with a finding, SN-108 pattern, SN-109 destination, SN-126 and SN-127 an answer of "seen" that its reading does not bear,
 *   SN-138 effect milder than the pattern's, SN-156 and SN-157 when what was written down late was seen or done,
 *   SN-211 work given to others, SN-212 other people's days, SN-227 oneself as the second person, SN-232 and SN-233 who says that they saw it, SN-261 and SN-263 openings less often than the manual has them, and those of `judgeBody`; empty where it is good
 */
export function judgeEntry(entry: Entry, facts: EntryFacts): readonly Fault[] {
  const body = judgeBody(entry);
  const who = [...judgeWho(entry, facts), ...judgeWhere(entry, facts)];
  const kind = entry.kind;
  if (!isEntryKind(kind)) return [...body, ...who];
  const rights = judgeRights(entry, kind, facts);
  return [...body, ...who, ...rights, ...(body.length === 0 ? judgeContent(entry, facts) : [])];
}

function judgeWho(entry: Entry, facts: EntryFacts): readonly Fault[] {
  const faults: Fault[] = [];
  if (entry.by !== facts.person) {
    const remedy = "A line is sent by the person who wrote it: sign in as that person on this device.";
    faults.push(because("SN-101", "by", entry.by, facts.person, remedy));
  }
  if (entry.device !== facts.device) {
    const remedy = "Send it from the device it was written on, or import its export.";
    faults.push(because("SN-102", "device", entry.device, facts.device, remedy));
  }
  return faults;
}

function judgeWhere(entry: Entry, facts: EntryFacts): readonly Fault[] {
  const isKit = sortOf(entry.subject) === "kit";
  if (isKit ? facts.hasPlace(entry.place) : entry.place === STATION_PLACE) return [];
  const allowed = isKit ? "a place of this station" : `"${STATION_PLACE}"`;
  return [noSuchPlace("place", entry.place, allowed)];
}

function judgeRights(entry: Entry, kind: EntryKind, facts: EntryFacts): readonly Fault[] {
  const faults: Fault[] = [];
  if (!mayWrite(facts.role, kind)) {
    faults.push(roleMayNot(facts.role, kind, WRITING[kind]));
  }
  const sort = subjectOfKind(kind);
  if (sort !== undefined && sortOf(entry.subject) !== sort) {
    const allowed = sort === "station" ? '"station"' : `a subject such as "${sort}:7f3k"`;
    faults.push(because("SN-105", "subject", entry.subject, allowed, "Write it about the thing it is about."));
  }
  return faults;
}

function judgeContent(entry: Entry, facts: EntryFacts): readonly Fault[] {
  if (entry.kind === STRIKE) return judgeStrike(entry as Entry<typeof STRIKE, StrikeBody>, facts);
  if (entry.kind === "kit-enrolled" || entry.kind === "kit-rebuilt") return judgePattern(entry, facts);
  if (isCasualtyKind(entry.kind)) return judgeTaken((entry.body as { readonly taken?: string }).taken, entry.at);
  if (entry.kind === "finding-raised") return judgeFinding(entry as Entry<string, Bodies["finding-raised"]>, facts);
  if (entry.kind === "returned") return judgeReturn(entry as Entry<string, Bodies["returned"]>, facts);
  if (entry.kind === "item-robbed") return judgeTaking(entry as Entry<string, Bodies["item-robbed"]>, facts);
  if (isStockKind(entry.kind)) return [...judgePart(entry, facts), ...judgeShelf(entry, facts)];
  if (entry.kind === "step-answered" || entry.kind === "finding-proved") return judgeAnswers(entry, facts);
  if (entry.kind === "work-taken") return judgeTaker(entry as Entry<string, Bodies["work-taken"]>, facts);
  if (entry.kind === "absence-set") return judgeAbsence(entry, facts);
  if (entry.kind === "second-named") return judgeSecond(entry as Entry<string, Bodies["second-named"]>);
  if (entry.kind === "second-confirmed") return judgeConfirmed(entry, facts);
  if (entry.kind === "practice-told") return judgeTold(entry as Entry<string, Bodies["practice-told"]>);
  if (entry.kind === "opening-interval-set") return judgeOpenings(entry, facts);
  if (entry.kind === "kit-moved") return judgeMove(entry.body as Bodies["kit-moved"], facts);
  const isLivedWith = entry.kind === "remedy-made" && (entry.body as Bodies["remedy-made"]).how === "lived-with";
  if (!isLivedWith || isKeeper(facts.role)) return [];
  const remedy = "Ask the keeper to decide whether it can be lived with.";
  return [because("SN-107", "body.how", "lived-with", '"mended" or "replaced"', remedy)];
}

function judgeStrike(entry: Entry<typeof STRIKE, StrikeBody>, facts: EntryFacts): readonly Fault[] {
  const struck = facts.find(entry.body.entry);
  if (struck?.subject !== entry.subject) {
    return [mayNotStrike(entry.body.entry, "a line that is kept, about the same subject")];
  }
  if (!mayUndo(struck, facts.role)) {
    return [mayNotStrike(entry.body.entry, `a line that the role ${facts.role} may write`)];
  }
  if (struck.by === facts.person || isKeeper(facts.role)) return [];
  return [mayNotStrike(entry.body.entry, "a line of your own")];
}

/** What a role may not write it may not undo; a strike about a person, place or device is an administrator's to undo. */
function mayUndo({ kind, subject }: Entry, role: Role): boolean {
  if (kind !== STRIKE) return isEntryKind(kind) && mayWrite(role, kind);
  return role === "administrator" || WORKED_ON.has(sortOf(subject));
}

function judgePattern(entry: Entry, facts: EntryFacts): readonly Fault[] {
  if (entry.pattern !== undefined && facts.hasPattern(entry.pattern)) return [];
  return [noSuchPattern(entry.pattern)];
}

/** A line about a part was written in sight of a line that the station keeps: the part is on its list. */
function judgePart({ kind, subject, after = [] }: Entry, facts: EntryFacts): readonly Fault[] {
  if (kind === "part-set" || after.some((id) => facts.find(id)?.subject === subject)) return [];
  return [because("SN-191", "subject", subject, "a part on the station's list", "Put the part on the list first.")];
}

function judgeShelf({ body }: Entry, facts: EntryFacts): readonly Fault[] {
  const said = body as Partial<Record<"place" | "from" | "to", string>>;
  return (["place", "from", "to"] as const).flatMap((field) => {
    const place = said[field];
    return place === undefined || facts.hasPlace(place) ? [] : [noSuchPlace(`body.${field}`, place)];
  });
}

function judgeFinding(entry: Entry<string, Bodies["finding-raised"]>, facts: EntryFacts): readonly Fault[] {
  return judgeEffect(entry.body, patternsOf(entry, facts));
}

function judgeTaking(entry: Entry<string, Bodies["item-robbed"]>, facts: EntryFacts): readonly Fault[] {
  return judgeTakenOut(entry.body, patternsOf(entry, facts));
}

function judgeReturn(entry: Entry<string, Bodies["returned"]>, facts: EntryFacts): readonly Fault[] {
  const patterns = patternsOf(entry, facts);
  return (entry.body.findings ?? []).flatMap((found) => judgeEffect(found, patterns));
}

function patternsOf(entry: Entry, facts: EntryFacts): readonly Pattern[] {
  const names = patternsToJudgeBy(entry, facts.builtTo?.(entry.subject) ?? []);
  return names.flatMap((name) => facts.patternNamed?.(name) ?? []);
}

/** Anyone takes work for themselves and lays down their own; a keeper decides for others. */
function judgeTaker({ body }: Entry<string, Bodies["work-taken"]>, facts: EntryFacts): readonly Fault[] {
  if (body.person === undefined || body.person === facts.person || isKeeper(facts.role)) return [];
  return [because("SN-211", "body.person", body.person, facts.person, "Ask the keeper to put somebody else to it.")];
}

function judgeAbsence(entry: Entry, facts: EntryFacts): readonly Fault[] {
  if (entry.subject === `person:${facts.person}` || isKeeper(facts.role)) return [];
  const remedy = "Ask the keeper to write down other people's days.";
  return [because("SN-212", "subject", entry.subject, `person:${facts.person}`, remedy)];
}

/** Whether the second person may see it done is judged where the whole log is; that it is somebody else, here too. */
function judgeSecond({ by, body }: Entry<string, Bodies["second-named"]>): readonly Fault[] {
  return body.second === by ? [secondIsDoer("body.second", by)] : [];
}

/** Of what somebody else was named for nobody says that they saw it; that a PIN was proved only the station says. */
function judgeConfirmed({ by, body }: Entry, facts: EntryFacts): readonly Fault[] {
  const { named, byPin } = body as Bodies["second-confirmed"];
  const line = facts.find(named);
  const isNamed = line?.kind === "second-named" && (line.body as Bodies["second-named"]).second === by;
  const remedy = "Confirm it while the station can be reached, or on a device of your own.";
  return [
    ...(line === undefined || isNamed ? [] : [notNamed(named)]),
    ...(byPin ? [because("SN-233", "body.byPin", true, "a line that the station wrote", remedy)] : []),
  ];
}

function judgeTold({ subject, body }: Entry<string, Bodies["practice-told"]>): readonly Fault[] {
  return subject === `person:${body.second}` ? [secondIsDoer("body.second", body.second!)] : [];
}

/** Never longer than the unit's own manual, whatever a device let somebody write. */
function judgeOpenings({ body }: Entry, { allPatterns }: EntryFacts): readonly Fault[] {
  return allPatterns ? openingFaults(body as Bodies["opening-interval-set"], allPatterns(), "body.") : [];
}

function judgeMove(body: Bodies["kit-moved"], facts: EntryFacts): readonly Fault[] {
  if (facts.hasPlace(body.to)) return [];
  return [because("SN-109", "body.to", body.to, "a place of this station", "Choose a place of this station.")];
}

function sortOf(subject: string): string {
  return subject.split(":", 1)[0] ?? "";
}
