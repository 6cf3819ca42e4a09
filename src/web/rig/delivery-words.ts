import { formatQuantity, inUnit, type UnitSystem } from "#base";
import { flowFigure, sayFlow, sayLength, type Words } from "#words";
import type { Advice } from "#hydraulics";
import { standsInWater, type PumpPattern, type RigAnswer, type RigSetting } from "./rig-setting.ts";

export type Answered = RigAnswer & { readonly kind: "answered" };
type Delivery = Answered["delivery"];
type RigWords = Words["rig"];

/** A setting with the person's units, for words. */
export interface Setting {
  readonly pattern: PumpPattern;
  readonly setting: RigSetting;
  readonly units: UnitSystem;
}

/** The answer in one line. */
export function sayAnswer({ delivery }: Answered, about: Setting, words: RigWords): string {
  const { units } = about;
  if (isTooShort(about)) return words.hoseShort(sayReach(about));
  if (delivery.kind === "cannot-lift") return sayNothing(about, words);
  const { low, high } = delivery.band;
  const flow = {
    flow: sayFlow(delivery.flow, units),
    low: flowFigure(low, units, Math.floor),
    high: flowFigure(high, units, Math.ceil),
  };
  return sayGiven(flow, about, words);
}

/** True where the suction hose is shorter than the lift. */
export function isTooShort({ pattern, setting }: Setting): boolean {
  return !standsInWater(pattern) && setting.lift > setting.suctionLength + 1e-9;
}

function sayReach({ setting, units }: Setting): { readonly hose: string; readonly lift: string } {
  const unit = units === "us" ? "ft" : "m";
  const say = (si: number) => formatQuantity(si, "length", { unit, digits: 3 });
  return { hose: say(setting.suctionLength), lift: say(setting.lift) };
}

function sayNothing({ pattern, setting, units }: Setting, words: RigWords): string {
  if (standsInWater(pattern)) return words.nothingAbove({ height: sayLength(setting.rise, units) });
  if (setting.lift < 0) return words.nothingBelow({ depth: sayLength(-setting.lift, units) });
  return words.nothingAtLift({ lift: sayLength(setting.lift, units) });
}

interface Given {
  readonly flow: string;
  readonly low: string;
  readonly high: string;
}

function sayGiven(flow: Given, { pattern, setting, units }: Setting, words: RigWords): string {
  if (standsInWater(pattern)) return words.flowAbove({ ...flow, height: sayLength(setting.rise, units) });
  if (setting.lift < 0) return words.flowBelow({ ...flow, depth: sayLength(-setting.lift, units) });
  return words.flowAtLift({ ...flow, lift: sayLength(setting.lift, units) });
}

/** What binds, and why, in one or two sentences. */
export function sayBinding({ delivery, curve }: Answered, { setting, units }: Setting, words: RigWords): string {
  if (delivery.kind === "cannot-lift") return sayCannotLift(delivery, curve.points[0]!, { units, words });
  if (delivery.kind === "suction-limited")
    return words.suctionBinds({ flow: sayFlow(delivery.points[0]?.flow ?? 0, units) });
  return words.curveBinds({
    head: sayLength(delivery.head, units),
    height: sayHeight(setting.lift + setting.rise, { units, words }),
    suction: sayLength(delivery.suctionLoss, units),
    discharge: sayLength(delivery.dischargeLoss, units),
  });
}

interface Reader {
  readonly units: UnitSystem;
  readonly words: RigWords;
}

/** What the height between the two waters takes, or gives where the hose ends lower than the water it draws. */
function sayHeight(height: number, { units, words }: Reader): string {
  if (Math.abs(height) < 1e-9) return words.heightLevel();
  if (height > 0) return words.heightTakes({ height: sayLength(height, units) });
  return words.heightHelps({ depth: sayLength(-height, units) });
}

function sayCannotLift(
  delivery: Delivery,
  atRest: Answered["curve"]["points"][number],
  { units, words }: Reader,
): string {
  if (delivery.limit === "suction")
    return words.suctionTooFar({ short: sayLength(atRest.npshRequired - atRest.npshAvailable, units) });
  return words.heightBinds({ most: sayLength(delivery.head, units), wanted: sayLength(atRest.rigHead, units) });
}

/** The second operating point of a drooping curve; nothing where there is one point or none. */
export function saySecondPoint({ delivery }: Answered, units: UnitSystem, words: RigWords): string | undefined {
  const lower = delivery.points.find(({ stable }) => !stable);
  return lower && words.secondPoint({ flow: sayFlow(lower.flow, units) });
}

/** One change and what it brings, in the person's units. */
export function sayAdvice(
  { kind, by, gain }: Pick<Advice, "kind" | "by" | "gain">,
  { pattern, setting, units }: Setting,
  words: RigWords,
): string {
  const { suction, discharge } = pattern.hydraulics;
  const [length, flow] = [sayLength(by, units), sayFlow(gain, units)];
  const bore = (from = 0) => sayBore(from + by, units);
  const said: Readonly<Record<Advice["kind"], () => string>> = {
    "lower-pump": () => words.lowerPump({ length, flow }),
    "shorten-suction": () => words.shortenSuction({ length, flow }),
    "shorten-discharge": () => words.shortenDischarge({ length, flow }),
    "lower-outlet": () => words.lowerOutlet({ length, flow }),
    "widen-suction": () => words.widenSuction({ bore: bore(suction?.bore), flow }),
    "widen-discharge": () => words.widenDischarge({ bore: bore(discharge.bore), flow }),
    "open-throttle": () => words.openThrottle({ flow }),
    "throttle-back": () => words.throttleBack({ percent: Math.ceil(100 * (setting.throttle - by)) }),
  };
  return said[kind]();
}

function sayBore(si: number, units: UnitSystem): string {
  return formatQuantity(si, "length", { unit: units === "us" ? "in" : "mm", digits: 2 });
}

/** What else is set, in one line, for the fold that holds it. */
export function saySetting({ pattern, setting, units }: Setting, words: RigWords): string {
  const unit = units === "us" ? "ft" : "m";
  const say = (si: number) => `${Number(inUnit(si, unit, "length").toPrecision(3))}\u00a0${unit}`;
  const temperature = formatQuantity(setting.waterTemperature, "temperature", { system: units, digits: 2 });
  return [
    ...(standsInWater(pattern) ? [] : [words.suctionHose({ length: say(setting.suctionLength) })]),
    words.dischargeHose({ length: say(setting.dischargeLength) }),
    ...(pattern.engine ? [sayThrottle(setting.throttle, words)] : []),
    setting.water === "sea" ? words.seaWater({ temperature }) : words.freshWater({ temperature }),
    setting.altitude > 0 ? words.altitude({ height: say(setting.altitude) }) : words.seaLevel(),
    words.pumps({ count: setting.pumps }),
  ].join(", ");
}

function sayThrottle(throttle: number, words: RigWords): string {
  return throttle >= 1 ? words.fullThrottle() : words.throttle({ percent: Math.round(100 * throttle) });
}
