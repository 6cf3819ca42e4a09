import { firstOf, lastOf } from "#base";
import type { FloodEvent, FloodOutcome, FloodSample } from "./flood-case.ts";

/** Net flow that counts as none: this share of what is pumped or comes in, whichever is more. */
const BALANCED_SHARE = 0.02;
/** A flow that counts as none, whatever else flows [m³/s]. */
const NO_FLOW = 1e-9;
/** Less water than this is a wet floor [m³]. */
const WET_FLOOR = 1e-3;

/** What a flooding that ran its time has come to. */
export function judgeOutcome(series: readonly FloodSample[], events: readonly FloodEvent[]): FloodOutcome {
  const last = lastOf(series);
  const total = totalWater(last);
  const dried = driedAt(series, events);
  if (dried !== undefined) return { kind: "dry", because: whyDry(total), at: dried };
  const net = last.inflow - last.pumped;
  const scale = Math.max(Math.abs(last.inflow), last.pumped);
  if (Math.abs(net) <= BALANCED_SHARE * scale + NO_FLOW) {
    return { kind: "holding", because: `${total.toFixed(2)} m³ aboard, neither rising nor falling` };
  }
  return net < 0
    ? { kind: "gaining", because: "more goes out than comes in" }
    : { kind: "losing", because: "more comes in than goes out" };
}

function whyDry(total: number): string {
  if (total <= WET_FLOOR) return "the pumps have reached the bottom";
  return `the water stands at the strainers: ${total.toFixed(2)} m³ lies below them`;
}

function driedAt(series: readonly FloodSample[], events: readonly FloodEvent[]): number | undefined {
  const last = lastOf(series);
  const isDry = totalWater(last) <= Math.max(WET_FLOOR, 0.01 * totalWater(firstOf(series))) && last.pumped > 0;
  const bare = events.filter((event) => event.kind === "suction-dry").at(-1);
  const isKeptOut = bare !== undefined && last.inflow <= last.pumped * (1 + BALANCED_SHARE) + NO_FLOW;
  if (isKeptOut && !refilled(events, bare.at) && !hasRisen(series, bare.at)) return bare.at;
  return isDry ? last.at : undefined;
}

function refilled(events: readonly FloodEvent[], since: number): boolean {
  return events.some((event) => event.kind === "suction-wet" && event.at > since);
}

/** The pumps may have stopped and the water come back with no strainer in it to say so. */
function hasRisen(series: readonly FloodSample[], since: number): boolean {
  const then = series.find((sample) => sample.at >= since)!;
  return totalWater(series.at(-1)!) > totalWater(then) + WET_FLOOR;
}

function totalWater(sample: FloodSample): number {
  return Object.values(sample.water).reduce((sum, volume) => sum + volume, 0);
}
