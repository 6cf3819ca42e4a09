import { formatEstimate, formatSpread, inUnit, type UnitSystem } from "#base";
import type { CasualtyBoat } from "#readiness";
import type { AxisUnit } from "../../../drawing/delivery-scales.ts";
import { sayTime } from "../../../parts/words/say-time.ts";

/** "190 L/min": two figures, since no flow is known better. */
export function sayFlow(si: number, system: UnitSystem): string {
  return formatEstimate(si, "flow", { unit: FLOW_UNITS[system] });
}

/** "160 L/min (13 to 1900)": what it is, and what it lies between nine times in ten. */
export function sayFlowSpread(spread: Parameters<typeof formatSpread>[0], system: UnitSystem): string {
  return formatSpread(spread, "flow", { unit: FLOW_UNITS[system] });
}

const FLOW_UNITS: Readonly<Record<UnitSystem, string>> = { metric: "L/min", us: "gpm" };

/** A level as people on deck say it: "54 cm", "21 in". */
export function sayLevel(si: number, system: UnitSystem): string {
  const unit = levelUnit(system);
  return `${Math.round(unit.of(si))}\u00a0${unit.symbol}`;
}

/** A level that is estimated: whole, and to two figures, "54 cm", "110 cm". */
export function sayLevelAbout(si: number, system: UnitSystem): string {
  const unit = levelUnit(system);
  return `${aboutLevel(si, system)}\u00a0${unit.symbol}`;
}

/** The same without its unit. */
export function aboutLevel(si: number, system: UnitSystem): number {
  return Number(Math.round(levelUnit(system).of(si)).toPrecision(2));
}

/** Levels are in centimetres or inches: whole figures, whatever the size. */
export function levelUnit(system: UnitSystem): AxisUnit {
  const symbol = system === "metric" ? "cm" : "in";
  return { symbol, of: (si) => inUnit(si, symbol, "length") };
}

/** "40 min", "2 h 10 min": coarse, as the estimate is. */
export function sayMinutes(seconds: number): string {
  const minutes = coarse(seconds / 60);
  if (minutes < 120) return `${minutes}\u00a0min`;
  const rest = minutes % 60;
  return rest === 0 ? `${minutes / 60}\u00a0h` : `${Math.floor(minutes / 60)}\u00a0h ${rest}\u00a0min`;
}

/** A span by the clock, to the minute: "52 min", "10 h 40 min". */
export function saySpan(minutes: number): string {
  return minutes < 60 ? `${minutes}\u00a0min` : `${Math.floor(minutes / 60)}\u00a0h ${minutes % 60}\u00a0min`;
}

/** Minutes no finer than they are known: whole to ten, then fives, then tens. */
function coarse(minutes: number): number {
  const step = minutes < 10 ? 1 : minutes < 120 ? 5 : 10;
  return Math.max(1, Math.round(minutes / step) * step);
}

/** A chance in words that do not promise: "97 in 100", "more than 99 in 100". */
export function sayChance(chance: number): string {
  const hundredths = Math.round(100 * chance);
  if (hundredths >= 100) return "more than 99 in 100";
  return hundredths <= 0 ? "less than 1 in 100" : `${hundredths} in 100`;
}

/** An instant on the reader's own clock: "14:35". */
export function sayClock(ms: number): string {
  return sayTime(ms);
}

/** A list as it is seen: "10° to port", "no list". */
export function sayList(list: number): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  return degrees === 0 ? "no list" : `${degrees}° to ${list > 0 ? "starboard" : "port"}`;
}

/** "motor boat, 9 m", "motor boat, 29.5 ft". */
export function sayBoat({ kind, length }: CasualtyBoat, system: UnitSystem): string {
  const unit = system === "metric" ? "m" : "ft";
  return `${kind}, ${Math.round(10 * inUnit(length, unit, "length")) / 10}\u00a0${unit}`;
}
