/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { RigWords } from "#src/words/made/kit/rig.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: RigWords = {
  hoseShort: (d) => "The suction hose does not reach: " + d.hose + " of hose for " + d.lift + " of lift.",
  nothingAbove: (d) => "No water comes with the hose's end " + d.height + " above the water.",
  nothingBelow: (d) => "No water comes with the pump " + d.depth + " below the water.",
  nothingAtLift: (d) => "No water comes at " + d.lift + " lift.",
  flowAbove: (d) =>
    "About " + d.flow + " with the hose's end " + d.height + " above the water, likely " + d.low + " to " + d.high,
  flowBelow: (d) =>
    "About " + d.flow + " with the pump " + d.depth + " below the water, likely " + d.low + " to " + d.high,
  flowAtLift: (d) => "About " + d.flow + " at " + d.lift + " lift, likely " + d.low + " to " + d.high,
  suctionBinds: (d) =>
    "The suction side binds: it feeds the pump no more. The pump's curve alone would give " + d.flow + ".",
  curveBinds: (d) =>
    "The pump's own curve binds: it gives " +
    d.head +
    " at this flow. " +
    d.height +
    " The suction hose takes " +
    d.suction +
    ", the discharge hose " +
    d.discharge +
    ".",
  heightLevel: () => "The hose ends level with the water, so height takes nothing.",
  heightTakes: (d) => "Height takes " + d.height + ".",
  heightHelps: (d) => "The hose ends " + d.depth + " below the water, which helps.",
  suctionTooFar: (d) =>
    "The suction binds: the water would have to be " + d.short + " nearer to the pump for it to draw at all.",
  heightBinds: (d) => "The height binds: the pump gives " + d.most + " at no flow, and " + d.wanted + " is needed.",
  secondPoint: (d) =>
    "The pump's curve droops, so it meets the hoses twice. The greater flow is stable. At " +
    d.flow +
    " there is a second meeting that is not: a pump that has not passed it may give nothing at this height.",
  lowerPump: (d) => "Lower the pump by " + d.length + ": gains about " + d.flow,
  shortenSuction: (d) => "Shorten the suction hose by " + d.length + ": gains about " + d.flow,
  shortenDischarge: (d) => "Shorten the discharge hose by " + d.length + ": gains about " + d.flow,
  lowerOutlet: (d) => "Hang the hose's end " + d.length + " lower: gains about " + d.flow,
  widenSuction: (d) => "Use a suction hose of " + d.bore + ": gains about " + d.flow,
  widenDischarge: (d) => "Use a discharge hose of " + d.bore + ": gains about " + d.flow,
  openThrottle: (d) => "Open the throttle fully: gains about " + d.flow,
  throttleBack: (d) =>
    "Throttle back to " + d.percent + " % of full speed: the same flow, less fuel, and the pump is spared",
  suctionHose: (d) => "suction hose " + d.length,
  dischargeHose: (d) => "discharge hose " + d.length,
  fullThrottle: () => "full throttle",
  throttle: (d) => d.percent + " % throttle",
  seaWater: (d) => "sea water " + d.temperature,
  freshWater: (d) => "fresh water " + d.temperature,
  altitude: (d) => d.height + " up",
  seaLevel: () => "sea level",
  pumps: (d) => plural(d.count, 0, en, { one: "one pump", other: strictNumber("en", d.count, 0, "count") + " pumps" }),
};
export default words;
