import { sayPercent } from "#words";
import { formatQuantity, type UnitSystem } from "#base";
import { lateBy, sayLateness, type Entry } from "#log";
import {
  isCasualtyKind,
  namesApart,
  type Bodies,
  type CasualtyBodies,
  type HandOver,
  type PumpSetting,
  type WrittenLate,
} from "#readiness";
import { methodWords } from "../hand-over/method.ts";
import { settingWords } from "./pump-words.ts";
import { situationWords, toldWords } from "./told-words.ts";
import { seenWords, signWords, startWords } from "./seen-words.ts";

/** What a timeline is told from. */
export interface TimelineLog {
  /** Every line in order, struck ones too, with the reason where one was struck, and when received where that was late. */
  readonly lines: readonly { readonly entry: Entry; readonly struck?: string; readonly received?: string }[];
  /** Kits that were on her; without a hand-over where none was written down. */
  readonly kits: readonly KitOnPaper[];
  readonly units: UnitSystem;
}

/** A kit that was on her. */
export interface KitOnPaper {
  readonly name: string;
  readonly handed?: Pick<HandOver, "at" | "method"> & { readonly by: string };
}

/** One line of the timeline, in words. */
export interface TimelineLine {
  /** RFC 3339, when it happened: of what was written down late, when it was seen or done. */
  readonly at: string;
  readonly words: string;
  /** Id of who wrote it down. */
  readonly by: string;
  readonly isGrave: boolean;
  /** The entry it tells; absent of a hand-over. */
  readonly entry?: string;
  /** Id of the pump it is about, where it is about one. */
  readonly pump?: string;
  /** True of a line that stops whatever pumps. */
  readonly endsPumping?: true;
}

/**
 * What happened, line by line in the order in which it happened: every line of the sheet, and the hand-overs of kits. A
 * struck line is told as things stood when it was written, and changes nothing.
 */
export function timelineLines({ lines, kits, units }: TimelineLog): readonly TimelineLine[] {
  const own = toldApart(lines.filter(({ entry }) => isCasualtyKind(entry.kind)));
  const entries = own.map(({ entry }) => entry);
  const names = { pumpNames: pumpNamesIn(entries), spaceNames: spaceNamesIn(entries) };
  let pumps: Pumps = new Map();
  const told = own.map(({ entry, struck, received }) => {
    const words = joined(wordsOf(entry, { pumps, ...names, units }), receivedWords(entry, received));
    if (struck === undefined) pumps = pumpsAfter(pumps, entry);
    const said = struck === undefined ? words : `STRUCK (${struck}): ${words}`;
    const own = { words: said, by: entry.by, isGrave: isGrave(entry), entry: entry.id };
    return { at: happened(entry), ...own, ...aboutPump(entry) };
  });
  return [...handedLines(kits), ...told].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

/** Pumps of one name told apart, as the sheet tells them. */
function toldApart(lines: TimelineLog["lines"]): TimelineLog["lines"] {
  const settings = lines.filter(({ entry }) => entry.kind === "pump-set").map(({ entry }) => entry.body as PumpSetting);
  const first = settings.filter(({ pump }, at) => settings.findIndex((one) => one.pump === pump) === at);
  const names = new Map(namesApart(first).map(({ pump, name }, at) => [pump, { name, from: first[at]!.name }]));
  return lines.map((line) => {
    const apart = line.entry.kind === "pump-set" ? names.get((line.entry.body as PumpSetting).pump) : undefined;
    if (apart === undefined || apart.name === apart.from) return line;
    return { ...line, entry: { ...line.entry, body: { ...(line.entry.body as PumpSetting), name: apart.name } } };
  });
}

/** "[received 2027-03-14 10:02 UTC, 3 days after it was written]", where it was received late. */
function receivedWords({ at }: Entry, received: string | undefined): string | false {
  const late = received === undefined ? undefined : lateBy(at, received);
  return late !== undefined && `[received ${utcWords(received!)} UTC, ${sayLateness(late)}]`;
}

function handedLines(kits: TimelineLog["kits"]): readonly TimelineLine[] {
  return kits.flatMap(({ name, handed: one }) =>
    one ? [{ at: one.at, words: `${name} handed over, ${methodWords(one.method)}`, by: one.by, isGrave: false }] : [],
  );
}

function aboutPump({ kind, body }: Entry): Pick<TimelineLine, "pump" | "endsPumping"> {
  const { pump } = body as { readonly pump?: unknown };
  if (typeof pump === "string") return { pump };
  return kind === "fuel-smelt" || kind === "casualty-closed" ? { endsPumping: true } : {};
}

function isGrave({ kind }: Entry): boolean {
  return kind === "fuel-smelt";
}

function happened({ at, kind, body }: Entry): string {
  const taken = isCasualtyKind(kind) ? (body as WrittenLate).taken : undefined;
  return taken !== undefined && Date.parse(taken) < Date.parse(at) ? taken : at;
}

/** Pumps as they are set, by id. */
type Pumps = ReadonlyMap<string, PumpSetting>;
/** Names by id: the first that any line gives, struck or not. */
type Names = ReadonlyMap<string, string>;

/** As things stood before a line. */
interface Standing {
  readonly pumps: Pumps;
  readonly pumpNames: Names;
  readonly spaceNames: Names;
  readonly units: UnitSystem;
}

function pumpNamesIn(entries: readonly Entry[]): Names {
  const settings = entries.filter(({ kind }) => kind === "pump-set").map(({ body }) => body as PumpSetting);
  return new Map(settings.map(({ pump, name }): [string, string] => [pump, name]).toReversed());
}

function spaceNamesIn(entries: readonly Entry[]): Names {
  const named = entries.filter(({ kind }) => kind === "casualty-opened" || kind === "casualty-changed");
  const spaces = named.flatMap(({ body }) => (body as Bodies["casualty-changed"]).space ?? []);
  return new Map(spaces.map(({ id, name }): [string, string] => [id, name]).toReversed());
}

/** Fuel smelt stops every pump. */
function pumpsAfter(pumps: Pumps, { kind, body }: Entry): Pumps {
  if (kind === "pump-set") return new Map([...pumps, [(body as PumpSetting).pump, body as PumpSetting]]);
  if (kind !== "fuel-smelt") return pumps;
  return new Map([...pumps].map(([id, one]) => [id, { ...one, running: false }]));
}

function wordsOf(entry: Entry, standing: Standing): string {
  const { kind, body, at } = entry;
  if (kind === "pump-set") return joined(pumpWords(body as PumpSetting, standing), lateWords(entry));
  if (kind === "pump-seen") {
    const { sign, ...seen } = body as Bodies["pump-seen"];
    return joined(`${nameOf(seen, standing)}: ${signWords(sign)}`, lateWords(entry));
  }
  if (kind === "pump-start-told") {
    const told = body as Bodies["pump-start-told"];
    return joined(`${nameOf(told, standing)}: ${startWords(told)}`, lateWords(entry));
  }
  if (kind === "pump-refuelled") return `${nameOf(body as Bodies["pump-refuelled"], standing)} refuelled`;
  const tell = TELLERS[kind as Told] as Tell<Told>;
  const words = tell(body as never, standing.units, at);
  const isOfSpace = kind === "sounding-taken" || kind === "hole-patched";
  return isOfSpace ? `${words}${placeWords((body as Bodies["hole-patched"]).space, standing)}` : words;
}

function lateWords({ at, body }: Entry): string | false {
  const { taken } = body as WrittenLate;
  return taken !== undefined && taken !== at && `(written down at ${clockWords(at)})`;
}

function pumpWords(now: PumpSetting, { pumps, spaceNames, units }: Standing): string {
  const before = pumps.get(now.pump);
  const spaceName = spaceNames.size > 1 ? spaceNames.get(now.space) : undefined;
  return settingWords(now, { ...(before && { before }), ...(spaceName !== undefined && { spaceName }), units });
}

function nameOf({ pump }: Bodies["pump-refuelled"], { pumps, pumpNames }: Standing): string {
  return pumps.get(pump)?.name ?? pumpNames.get(pump) ?? "A pump";
}

/** Which space, where she has more than one. */
function placeWords(space: string, { spaceNames }: Standing): string {
  const name = spaceNames.get(space);
  return spaceNames.size > 1 && name !== undefined ? ` in ${name}` : "";
}

type Told = Exclude<keyof CasualtyBodies, "pump-set" | "pump-seen" | "pump-start-told" | "pump-refuelled">;
type Tell<Kind extends Told> = (body: Bodies[Kind], units: UnitSystem, at: string) => string;

const TELLERS: { readonly [Kind in Told]: Tell<Kind> } = {
  "casualty-opened": ({ name, note, situation, ...body }, units) => {
    const told = toldWords(body, units, clockWords);
    const where = situation && situationWords(situation);
    return joined(`Sheet opened: ${name}${note || told || where ? "." : ""}`, told, where, note);
  },
  "casualty-changed": ({ boat, space, hole, situation }) =>
    joined(
      "Better known:",
      boat && "the boat's measures",
      space && `water in ${space.name}`,
      hole && "the hole",
      situation && situationWords(situation),
    ),
  "sounding-taken": ({ level, text, taken }, units, at) =>
    joined(
      `Sounded ${text}`,
      units === "us" && `(${formatQuantity(level, "length", { unit: "in", digits: 2 })})`,
      taken !== undefined && taken !== at && `(written down at ${clockWords(at)})`,
    ),
  "hole-patched": ({ open, taken }, _, at) =>
    joined(
      `Plugged or patched: ${sayPercent(open)} still open`,
      taken !== undefined && taken !== at && `(written down at ${clockWords(at)})`,
    ),
  "stability-seen": (seen, units) => `Seen: ${seenWords(seen, units)}`,
  "tow-set": ({ under }) => (under ? "Taken in tow" : "Tow cast off"),
  "fuel-smelt": ({ note }) => joined("Fuel smelt: all pumps stopped", note),
  "fuel-cleared": ({ note }) => joined("Found clear of fuel:", note),
  "casualty-joined": () => "Joined with another sheet opened for her",
  "casualty-noted": ({ note }) => note,
  "review-noted": ({ note }) => joined("Added afterwards:", note),
  "casualty-reviewed": ({ note }) => joined("Gone through afterwards.", note),
  "casualty-closed": ({ outcome, note }) => joined(`Closed: ${outcome.replaceAll("-", " ")}${note ? "." : ""}`, note),
};

function joined(...parts: readonly (string | false | undefined)[]): string {
  return parts.filter((part) => typeof part === "string" && part !== "").join(" ");
}

/** Day and minute in UTC: lines of devices whose clocks stand in different zones are read in one. */
export function utcWords(at: string): string {
  return new Date(at).toISOString().slice(0, 16).replace("T", " ");
}

function clockWords(at: string): string {
  return utcWords(at).slice(11);
}
