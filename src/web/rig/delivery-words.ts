import { formatQuantity, inUnit, type UnitSystem } from "#base";
import { flowFigure, sayFlow, sayLength } from "#words";
import type { Advice } from "#hydraulics";
import { standsInWater, type PumpPattern, type RigAnswer, type RigSetting } from "./rig-setting.ts";

export type Answered = RigAnswer & { readonly kind: "answered" };
type Delivery = Answered["delivery"];

/** A setting with the person's units, for words. */
export interface Setting {
  readonly pattern: PumpPattern;
  readonly setting: RigSetting;
  readonly units: UnitSystem;
}

/** The answer in one line. */
export function sayAnswer({ delivery }: Answered, about: Setting): string {
  const { units } = about;
  if (isTooShort(about)) return `The suction hose does not reach: ${sayReach(about)}.`;
  if (delivery.kind === "cannot-lift") return `No water comes ${sayWhere(about)}.`;
  const { low, high } = delivery.band;
  const likely = `likely ${flowFigure(low, units, Math.floor)} to ${flowFigure(high, units, Math.ceil)}`;
  return `About ${sayFlow(delivery.flow, units)} ${sayWhere(about)}, ${likely}`;
}

/** True where the suction hose is shorter than the lift. */
export function isTooShort({ pattern, setting }: Setting): boolean {
  return !standsInWater(pattern) && setting.lift > setting.suctionLength + 1e-9;
}

function sayReach({ setting, units }: Setting): string {
  const unit = units === "us" ? "ft" : "m";
  const say = (si: number) => formatQuantity(si, "length", { unit, digits: 3 });
  return `${say(setting.suctionLength)} of hose for ${say(setting.lift)} of lift`;
}

function sayWhere({ pattern, setting, units }: Setting): string {
  if (standsInWater(pattern)) return `with the hose's end ${sayLength(setting.rise, units)} above the water`;
  if (setting.lift < 0) return `with the pump ${sayLength(-setting.lift, units)} below the water`;
  return `at ${sayLength(setting.lift, units)} lift`;
}

/** What binds, and why, in one or two sentences. */
export function sayBinding({ delivery, curve }: Answered, { setting, units }: Setting): string {
  if (delivery.kind === "cannot-lift") return sayCannotLift(delivery, curve.points[0]!, units);
  if (delivery.kind === "suction-limited") {
    const alone = sayFlow(delivery.points[0]?.flow ?? 0, units);
    return `The suction side binds: it feeds the pump no more. The pump's curve alone would give ${alone}.`;
  }
  const [suction, discharge] = [delivery.suctionLoss, delivery.dischargeLoss].map((loss) => sayLength(loss, units));
  return (
    `The pump's own curve binds: it gives ${sayLength(delivery.head, units)} at this flow. ` +
    `${sayHeight(setting.lift + setting.rise, units)} The suction hose takes ${suction}, the discharge hose ${discharge}.`
  );
}

/** What the height between the two waters takes, or gives where the hose ends lower than the water it draws. */
function sayHeight(height: number, units: UnitSystem): string {
  if (Math.abs(height) < 1e-9) return "The hose ends level with the water, so height takes nothing.";
  if (height > 0) return `Height takes ${sayLength(height, units)}.`;
  return `The hose ends ${sayLength(-height, units)} below the water, which helps.`;
}

function sayCannotLift(delivery: Delivery, atRest: Answered["curve"]["points"][number], units: UnitSystem): string {
  if (delivery.limit === "suction") {
    const short = sayLength(atRest.npshRequired - atRest.npshAvailable, units);
    return `The suction binds: the water would have to be ${short} nearer to the pump for it to draw at all.`;
  }
  const [most, wanted] = [delivery.head, atRest.rigHead].map((head) => sayLength(head, units));
  return `The height binds: the pump gives ${most} at no flow, and ${wanted} is needed.`;
}

/** The second operating point of a drooping curve; nothing where there is one point or none. */
export function saySecondPoint({ delivery }: Answered, units: UnitSystem): string | undefined {
  const lower = delivery.points.find(({ stable }) => !stable);
  if (!lower) return undefined;
  return (
    `The pump's curve droops, so it meets the hoses twice. The greater flow is stable. At ${sayFlow(lower.flow, units)} ` +
    "there is a second meeting that is not: a pump that has not passed it may give nothing at this height."
  );
}

/** One change and what it brings, in the person's units. */
export function sayAdvice(advice: Pick<Advice, "kind" | "by" | "gain">, { pattern, setting, units }: Setting): string {
  const { kind, by, gain } = advice;
  const { suction, discharge } = pattern.hydraulics;
  const [length, bore] = [sayLength(by, units), (from = 0) => sayBore(from + by, units)];
  const words: Readonly<Record<Advice["kind"], string>> = {
    "lower-pump": `Lower the pump by ${length}`,
    "shorten-suction": `Shorten the suction hose by ${length}`,
    "shorten-discharge": `Shorten the discharge hose by ${length}`,
    "lower-outlet": `Hang the hose's end ${length} lower`,
    "widen-suction": `Use a suction hose of ${bore(suction?.bore)}`,
    "widen-discharge": `Use a discharge hose of ${bore(discharge.bore)}`,
    "open-throttle": "Open the throttle fully",
    "throttle-back": `Throttle back to ${Math.ceil(100 * (setting.throttle - by))}\u00a0% of full speed`,
  };
  if (kind === "throttle-back") return `${words[kind]}: the same flow, less fuel, and the pump is spared`;
  return `${words[kind]}: gains about ${sayFlow(gain, units)}`;
}

function sayBore(si: number, units: UnitSystem): string {
  return formatQuantity(si, "length", { unit: units === "us" ? "in" : "mm", digits: 2 });
}

/** What else is set, in one line, for the fold that holds it. */
export function saySetting({ pattern, setting, units }: Setting): string {
  const unit = units === "us" ? "ft" : "m";
  const say = (si: number) => `${Number(inUnit(si, unit, "length").toPrecision(3))}\u00a0${unit}`;
  const suction = standsInWater(pattern) ? [] : [`suction hose ${say(setting.suctionLength)}`];
  const temperature = formatQuantity(setting.waterTemperature, "temperature", { system: units, digits: 2 });
  return [
    ...suction,
    `discharge hose ${say(setting.dischargeLength)}`,
    ...(pattern.engine
      ? [setting.throttle >= 1 ? "full throttle" : `${Math.round(100 * setting.throttle)}\u00a0% throttle`]
      : []),
    `${setting.water} water ${temperature}`,
    setting.altitude > 0 ? `${say(setting.altitude)} up` : "sea level",
    setting.pumps > 1 ? `${setting.pumps} pumps` : "one pump",
  ].join(", ");
}
