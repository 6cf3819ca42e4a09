import { formatDate, parseDate, printGiven, type Fault } from "#base";
import { isSameSeal, sealNumbersOf, type KitState } from "#readiness";
import type { Doing } from "./draft.ts";

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
  return because("SN-104", field, place, "a place of this station", "Choose a place of this station.");
}

/** A seal number that was never on any kit. */
export function needNewSeal(doing: Doing, seal: string): Fault | undefined {
  const used = doing.kits.find((kit) => sealNumbersOf(kit).some((number) => isSameSeal(number, seal)));
  if (!used) return undefined;
  return because("SN-117", "body.seal", seal, "a seal number never used before", `It was used on ${used.name}.`);
}

/** One fault in a person's words. */
export function because(code: string, field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code, field, got: printGiven(got), allowed, remedy };
}

/** A pattern version the station has. */
export function needPattern(doing: Doing, pattern: string): Fault | undefined {
  if (doing.patterns.has(pattern)) return undefined;
  const remedy = "Choose the pattern that the kit is built to.";
  return because("SN-108", "pattern", pattern, "a pattern version this station has", remedy);
}

/** A day that has come. */
export function needNotAhead(doing: Doing, day: string, field: string): Fault | undefined {
  if (day.slice(0, 10) <= doing.today) return undefined;
  const allowed = `a day up to today, ${formatDate(parseDate(doing.today))}`;
  return because("SN-120", field, day, allowed, "Check the date, and the date of this device.");
}
