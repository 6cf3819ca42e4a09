import { mixBits, normalQuantile } from "#numerics";
import { riseSpread, type ToldWater } from "./kits-needed-call.ts";

/**
 * What her own pumps and people move where a fall is told: a small bilge pump, a hand pump, buckets [m³/s]; and how often
 * nothing is pumped at all, so that a fall is the stick or the telling. This program's judgement.
 */
const HER_PUMPS = { median: 60 / 60e3, logSpread: 1, none: 0.2 };
const ROOT = Math.sqrt(2 * Math.PI);

/**
 * How well a boat fits a fall that was told: her own pumps move more than comes in, by as much as the level falls. What
 * they move is not known; it is summed out with one draw for each boat. A fall thus bounds the hole by what such pumps can
 * move, and does not say that it is shut.
 *
 * @param boat - inflow [m³/s], area of the water's surface [m²], and the number of the draw
 * @param told - rate, below 0, and its doubt [m/s]
 * @returns log density
 * @range falls down to -0.1 m/s
 * @source DERIVED: level = (inflow − pumped) / area, summed over a log-normal pump; docs/methods/kits-needed.md, "A level that falls"
 */
export function fitOfFall(
  { inflow, surface, draw }: { readonly inflow: number; readonly surface: number; readonly draw: number },
  told: NonNullable<ToldWater["rise"]>,
): number {
  const spread = riseSpread(told.rate, told);
  const off = (inflow / surface - told.rate) / spread;
  const unpumped = Math.exp(-0.5 * off * off) / (ROOT * spread);
  const rate = told.rate + spread * normalQuantile(((mixBits(draw + 104_729) >>> 0) + 0.5) / 2 ** 32);
  const pumped = surface * densityOfPumps(inflow - surface * rate);
  return Math.log(HER_PUMPS.none * unpumped + (1 - HER_PUMPS.none) * pumped);
}

/** Density of what her own pumps move [s/m³]; none below nothing. */
function densityOfPumps(flow: number): number {
  if (flow <= 0) return 0;
  const { median, logSpread } = HER_PUMPS;
  const z = Math.log(flow / median) / logSpread;
  return Math.exp(-0.5 * z * z) / (ROOT * logSpread * flow);
}
