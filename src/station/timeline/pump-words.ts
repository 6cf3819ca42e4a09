import { sayDuration, sayFlow } from "#words";
import { formatQuantity, type UnitSystem } from "#base";
import type { PumpSetting } from "#readiness";

/** How a setting is told. */
export interface SettingTelling {
  /** As the pump was set before; left out for the first line of a pump. */
  readonly before?: PumpSetting;
  /** Name of the space it draws from, where she has more than one. */
  readonly spaceName?: string;
  readonly units: UnitSystem;
}

/**
 * What a pump's line says: what is changed by it, each setting in words; one that changes nothing says so.
 *
 * @param now - as it is set from this line on
 * @returns such as "Pump 1 pumping, about 220 L/min, engine full, lift 2.0 m"
 */
export function settingWords(now: PumpSetting, telling: SettingTelling): string {
  const changes = changesOf(now, telling).join(", ");
  const rest = changes && `, ${changes}`;
  const { before, units } = telling;
  if (now.running && !before?.running) return `${now.name} pumping, ${flowWords(now.flow, units)}${rest}`;
  if (!now.running && before === undefined) return `${now.name} not running${rest}`;
  if (!now.running) return `${now.name} ${before!.running || changes ? "off" : "off, as before"}${rest}`;
  return changes ? `${now.name} now: ${changes}` : `${now.name} as before, ${flowWords(now.flow, units)}`;
}

/** The settings that are other than before; of a pump that starts, those that are known. */
function changesOf(now: PumpSetting, { before, spaceName, units }: SettingTelling): readonly string[] {
  const { throttle, lift, runtime } = now;
  const isOther = (setting: keyof PumpSetting) => now[setting] !== undefined && now[setting] !== before?.[setting];
  const all: (string | false)[] = [
    before !== undefined && isOther("name") && `named ${now.name}, before ${before.name}`,
    isOther("space") && fromWords(before !== undefined, spaceName),
    before?.running === true && now.running && isOther("flow") && flowWords(now.flow, units),
    throttle !== undefined && isOther("throttle") && throttleWords(throttle),
    lift !== undefined && isOther("lift") && `lift ${liftWords(lift, units)}`,
    runtime !== undefined && isOther("runtime") && `a tank lasts ${sayDuration(runtime, "elapsed")}`,
  ];
  return all.filter((one) => one !== false);
}

function fromWords(isMoved: boolean, name: string | undefined): string | false {
  return (isMoved || name !== undefined) && `drawing from ${name ?? "another space"}`;
}

function flowWords(flow: number, units: UnitSystem): string {
  return `about ${sayFlow(flow, units)}`;
}

function throttleWords(ratio: number): string {
  return ratio === 1 ? "engine full" : `engine at ${Math.round(100 * ratio)} % speed`;
}

function liftWords(lift: number, units: UnitSystem): string {
  return formatQuantity(lift, "length", { unit: units === "us" ? "ft" : "m", digits: 2 });
}
