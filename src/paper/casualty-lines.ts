import { formatEstimate, formatQuantity, type UnitSystem } from "#base";
import type { Entry } from "#log";
import {
  isCasualtyKind,
  type Bodies,
  type CasualtyBodies,
  type HandOver,
  type KitBodies,
  type PumpSetting,
} from "#readiness";

/** What a timeline is told from. */
export interface TimelineLog {
  /** Every line in order, struck ones too, with the reason where one was struck. */
  readonly lines: readonly { readonly entry: Entry; readonly struck?: string }[];
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
  /** RFC 3339, when it happened: a sounding's is when it was read. */
  readonly at: string;
  readonly words: string;
  /** Id of who wrote it down. */
  readonly by: string;
  readonly isGrave: boolean;
}

/**
 * What happened, line by line in the order in which it happened: the sheet's own lines and the hand-overs of kits. A
 * pump set as it already was is no event; struck lines are told, and change nothing.
 */
export function timelineLines({ lines, kits, units }: TimelineLog): readonly TimelineLine[] {
  const teller = createTeller(units);
  const own = lines
    .filter(({ entry }) => isCasualtyKind(entry.kind))
    .flatMap(({ entry, struck }) => {
      const words = struck === undefined ? teller(entry) : `STRUCK (${struck}): ${createTeller(units)(entry) ?? ""}`;
      return words === undefined ? [] : [{ at: happened(entry), words, by: entry.by, isGrave: isGrave(entry) }];
    });
  const handed = kits.flatMap(({ name, handed: one }) =>
    one ? [{ at: one.at, words: `${name} handed over, ${METHODS[one.method]}`, by: one.by, isGrave: false }] : [],
  );
  return [...handed, ...own].toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

const METHODS: Readonly<Record<KitBodies["handed-over"]["method"], string>> = {
  passed: "by hand",
  hoisted: "hoisted",
  dropped: "dropped",
  line: "on a line",
  other: "another way",
};

/** How a kit went across: "on a line". */
export function methodWords(method: KitBodies["handed-over"]["method"]): string {
  return METHODS[method];
}

function isGrave({ kind }: Entry): boolean {
  return kind === "fuel-smelt";
}

function happened({ at, kind, body }: Entry): string {
  const taken = kind === "sounding-taken" ? (body as Bodies["sounding-taken"]).taken : undefined;
  return taken !== undefined && Date.parse(taken) < Date.parse(at) ? taken : at;
}

/** Tells entries in order: what a pump's line says goes by how the pump was set before it. */
function createTeller(units: UnitSystem): (entry: Entry) => string | undefined {
  const pumps = new Map<string, PumpSetting>();
  return ({ kind, body, at }) => {
    if (kind === "pump-set") return tellPump(pumps, body as PumpSetting, units);
    if (kind === "pump-refuelled") return `${nameOf(pumps, (body as Bodies["pump-refuelled"]).pump)} refuelled`;
    if (kind === "fuel-smelt") pumps.forEach((one, id) => pumps.set(id, { ...one, running: false }));
    const tell = TELLERS[kind as keyof typeof TELLERS] as Tell<keyof typeof TELLERS>;
    return tell(body as never, units, at);
  };
}

function nameOf(pumps: ReadonlyMap<string, PumpSetting>, pump: string): string {
  return pumps.get(pump)?.name ?? "A pump";
}

function tellPump(pumps: Map<string, PumpSetting>, now: PumpSetting, units: UnitSystem): string | undefined {
  const before = pumps.get(now.pump);
  pumps.set(now.pump, now);
  const flow = `about ${flowWords(now.flow, units)}`;
  if (!before?.running) return now.running ? `${now.name} pumping, ${flow}` : undefined;
  if (!now.running) return `${now.name} off`;
  if (now.space !== before.space) return `${now.name} now drawing from another space, ${flow}`;
  return flowWords(before.flow, units) === flowWords(now.flow, units) ? undefined : `${now.name} now ${flow}`;
}

function flowWords(flow: number, units: UnitSystem): string {
  return formatEstimate(flow, "flow", { unit: units === "us" ? "gpm" : "L/min" });
}

type Told = Exclude<keyof CasualtyBodies, "pump-set" | "pump-refuelled">;
type Tell<Kind extends Told> = (body: Bodies[Kind], units: UnitSystem, at: string) => string;

const TELLERS: { readonly [Kind in Told]: Tell<Kind> } = {
  "casualty-opened": ({ name, note }) => joined(`Sheet opened: ${name}${note ? "." : ""}`, note),
  "casualty-changed": ({ boat, space, hole }) =>
    joined("Better known:", boat && "the boat's measures", space && `water in ${space.name}`, hole && "the hole"),
  "sounding-taken": ({ level, text, taken }, units, at) =>
    joined(
      `Sounded ${text}`,
      units === "us" && `(${formatQuantity(level, "length", { unit: "in", digits: 2 })})`,
      taken !== undefined && taken !== at && `(written down at ${clockWords(at)})`,
    ),
  "hole-patched": ({ open }) => `Plugged or patched: ${Math.round(100 * open)} % still open`,
  "stability-seen": ({ list, rollPeriod, righting }) =>
    joined(
      "Seen:",
      list !== undefined && listWords(list),
      rollPeriod !== undefined && `roll of ${rollPeriod.toFixed(1)} s`,
      righting && RIGHTING_WORDS[righting],
    ),
  "fuel-smelt": ({ note }) => joined("Fuel smelt: all pumps stopped", note),
  "fuel-cleared": ({ note }) => joined("Found clear of fuel:", note),
  "casualty-noted": ({ note }) => note,
  "casualty-closed": ({ outcome, note }) => joined(`Closed: ${outcome.replaceAll("-", " ")}${note ? "." : ""}`, note),
};

const RIGHTING_WORDS = {
  "comes-back": "comes back from a roll",
  slowly: "comes back slowly from a roll",
  stays: "stays over: does not come back",
} as const;

function joined(...parts: readonly (string | false | undefined)[]): string {
  return parts.filter((part) => typeof part === "string" && part !== "").join(" ");
}

function listWords(list: number): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  return degrees === 0 ? "no list" : `list ${degrees}° to ${list > 0 ? "starboard" : "port"}`;
}

/** Day and minute in UTC: lines of devices whose clocks stand in different zones are read in one. */
export function utcWords(at: string): string {
  return new Date(at).toISOString().slice(0, 16).replace("T", " ");
}

function clockWords(at: string): string {
  return utcWords(at).slice(11);
}
