import { formatDate, parseDate, plainName, type Fault } from "#base";
import { drillsOn, isSameSeal, sealNumbersOf, type KitState } from "#readiness";
import type { ActContext } from "./draft.ts";
import { because, noSuchPattern, noSuchPlace } from "../judging/faults.ts";

/** Paper older than this is taken for a slip of the pen: judgement. */
const MEMORY_YEARS = 50;

/* What acts need to hold, each as the fault to show where it does not. */

/** The kit is on charge. */
export function needOnCharge(kit: KitState): Fault | undefined {
  if (!kit.retired) return undefined;
  return because("SN-114", "kit", kit.name, "a kit that was not retired", `It was retired: ${kit.retired.reason}`);
}

/** The kit is not out on loan. */
export function needHere(kit: KitState): Fault | undefined {
  if (kit.custody.kind !== "away") return undefined;
  const remedy = `It is with ${kit.custody.to}: take it back first.`;
  return because("SN-115", "kit", kit.name, "a kit that is here", remedy);
}

/** No turnaround is open on the kit. */
export function needClosed(kit: KitState): Fault | undefined {
  if (!kit.turnaround) return undefined;
  return because("SN-116", "kit", kit.name, "a closed kit", "Close its turnaround first, sealed or grounded.");
}

/** A place of the station that is not closed. */
export function needPlace(doing: ActContext, place: string, field: string): Fault | undefined {
  if (doing.places.some((one) => one.id === place && !one.closed)) return undefined;
  return noSuchPlace(field, place);
}

/** A seal number that was never on any kit. */
export function needNewSeal(doing: ActContext, seal: string): Fault | undefined {
  const used = doing.kits.find((kit) => sealNumbersOf(kit).some((number) => isSameSeal(number, seal)));
  if (!used) return undefined;
  return because("SN-117", "body.seal", seal, "a seal number never used before", `It was used on ${used.name}.`);
}

/** A name that no other kit on charge has, whatever its capitals: one shouted across a deck must mean one kit. */
export function needNewKitName(doing: ActContext, name: string, own?: string): Fault | undefined {
  const same = (one: string) => plainName(one) === plainName(name);
  const twin = doing.kits.find((other) => other.id !== own && !other.retired && same(other.name));
  if (!twin) return undefined;
  const remedy = `The kit with serial ${twin.serial} has it. Choose another name.`;
  return because("SN-139", "body.name", name, "a name no other kit has", remedy);
}

/** A pattern version the station has. */
export function needPattern(doing: ActContext, pattern: string): Fault | undefined {
  if (doing.patterns.has(pattern)) return undefined;
  return noSuchPattern(pattern);
}

/** No drill is on: faults may be planted in the kit. */
export function needNoDrill(kit: KitState): Fault | undefined {
  if (drillsOn(kit).length === 0) return undefined;
  const remedy =
    "Take another kit. End the drill, take out what was planted, and turn it round before it goes anywhere.";
  return because("SN-241", "kit", kit.name, "a kit that is not set aside for a drill", remedy);
}

/** A day that people now at work may have on paper. */
export function needWithinMemory(doing: ActContext, day: string, field: string): Fault | undefined {
  const first = `${Number(doing.today.slice(0, 4)) - MEMORY_YEARS}-01-01`;
  if (`${day}-01`.slice(0, 10) >= first) return undefined;
  const allowed = `a day from ${formatDate(parseDate(first))} on`;
  return because("SN-130", field, day, allowed, "Check the year.");
}

/** A day that is not past. */
export function needNotPast(doing: ActContext, day: string, field: string): Fault | undefined {
  if (day >= doing.today) return undefined;
  const allowed = `a day from today on, ${formatDate(parseDate(doing.today))}`;
  return because("SN-240", field, day, allowed, "Check the date, and the date of this device.");
}

/** A day that has come. */
export function needNotAhead(doing: ActContext, day: string, field: string): Fault | undefined {
  if (day.slice(0, 10) <= doing.today) return undefined;
  const allowed = `a day up to today, ${formatDate(parseDate(doing.today))}`;
  return because("SN-120", field, day, allowed, "Check the date, and the date of this device.");
}
