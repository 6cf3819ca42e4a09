import { formatDate, parseDate, type Fault } from "#base";
import { drillsOn, isSameSeal, sealNumbersOf, type KitState } from "#readiness";
import type { Doing } from "./draft.ts";
import { because, noSuchPattern, noSuchPlace } from "../judging/faults.ts";

/* What acts need to hold, each as the fault to show where it does not. */

/** The kit is on charge. */
export function needOnCharge(kit: KitState): Fault | undefined {
  if (!kit.retired) return undefined;
  return because("SN-114", "kit", kit.name, "a kit on charge", `It was retired: ${kit.retired.reason}`);
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
export function needPlace(doing: Doing, place: string, field: string): Fault | undefined {
  if (doing.places.some((one) => one.id === place && !one.closed)) return undefined;
  return noSuchPlace(field, place);
}

/** A seal number that was never on any kit. */
export function needNewSeal(doing: Doing, seal: string): Fault | undefined {
  const used = doing.kits.find((kit) => sealNumbersOf(kit).some((number) => isSameSeal(number, seal)));
  if (!used) return undefined;
  return because("SN-117", "body.seal", seal, "a seal number never used before", `It was used on ${used.name}.`);
}

/** A pattern version the station has. */
export function needPattern(doing: Doing, pattern: string): Fault | undefined {
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

/** A day that is not past. */
export function needNotPast(doing: Doing, day: string, field: string): Fault | undefined {
  if (day >= doing.today) return undefined;
  const allowed = `a day from today on, ${formatDate(parseDate(doing.today))}`;
  return because("SN-240", field, day, allowed, "Check the date, and the date of this device.");
}

/** A day that has come. */
export function needNotAhead(doing: Doing, day: string, field: string): Fault | undefined {
  if (day.slice(0, 10) <= doing.today) return undefined;
  const allowed = `a day up to today, ${formatDate(parseDate(doing.today))}`;
  return because("SN-120", field, day, allowed, "Check the date, and the date of this device.");
}
