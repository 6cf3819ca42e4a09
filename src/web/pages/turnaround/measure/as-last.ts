import { formatQuantity, type UnitSystem } from "#base";
import type { Pattern } from "#kit";
import type { KitState } from "#readiness";
import { hasSuction, type Box, type MeasureDraft } from "./measure-draft.ts";
import { methodChoices, type Reader } from "./measure-words.ts";

/** How the delivery was measured the last time, to be taken over by one tap: nothing of what was read, only the rig. */
export interface LastRig {
  /** Of the rig, one after the other. */
  readonly said: string;
  readonly draft: MeasureDraft;
}

/**
 * The rig of the newest measurement of a kit at an earlier turnaround, where it ran flat out on its own hoses.
 *
 * @returns undefined where none was measured, or it was rigged otherwise
 */
export function lastRig(kit: KitState, pattern: Pattern, step: string, reader: Reader): LastRig | undefined {
  const last = kit.turnarounds.flatMap(({ measured }) => measured).findLast((one) => one.step === step);
  if (!last || !isPacked(last, pattern) || (pattern.engine && last.throttle !== 1)) return undefined;
  const { units, words } = reader;
  const rig = heightsOf(last, pattern, units);
  const method =
    methodChoices(words)
      .find(({ value }) => value === last.method)
      ?.label.toLowerCase() ?? last.method;
  const said = [
    ...(rig.lift === undefined ? [] : [words.lastLift({ length: rig.lift })]),
    ...(rig.rise === undefined ? [] : [words.lastRise({ length: rig.rise })]),
    words.lastHoses(),
    ...(pattern.engine ? [words.lastThrottle()] : []),
    method,
  ];
  const boxes = Object.fromEntries(Object.entries(rig).map(([box, text]) => [box, { typed: text, quantity: text }]));
  return { said: said.join(", "), draft: { method: last.method, hoses: "packed", speed: "full", boxes } };
}

type Measured = KitState["turnarounds"][number]["measured"][number];

function heightsOf({ lift, rise }: Measured, pattern: Pattern, units: UnitSystem): Partial<Record<Box, string>> {
  const say = (si: number) => formatQuantity(si, "length", { system: units });
  return hasSuction(pattern) ? { lift: say(lift), rise: say(rise) } : { rise: say(rise) };
}

function isPacked({ suctionLength, dischargeLength }: Measured, { hydraulics }: Pattern): boolean {
  return isOwn(suctionLength, hydraulics?.suction?.length) && isOwn(dischargeLength, hydraulics?.discharge.length);
}

/** No length is the packed one: it is written down only where it was told. */
function isOwn(length: number | undefined, packed: number | undefined): boolean {
  return length === undefined || length === packed;
}
