import { formatQuantity, type UnitSystem } from "#base";
import type { Pattern, PatternHydraulics } from "#kit";
import type { PatternCard } from "#paper";
import { deliveryTableQuestion, TABLE_LIFTS } from "#questions";

/** As the screen takes it before anything is set: sea water of 12 °C at sea level, the hose's end 1 m above the pump. */
const AS_PRINTED = { water: { temperature: 285.15, salinity: 35 }, air: { altitude: 0 }, rise: 1 };

/** What a pattern's kit delivers at several lifts with its hoses as packed; undefined where the pattern does not say. */
export function cardDelivery(pattern: Pattern, units: UnitSystem): PatternCard["delivery"] {
  const { hydraulics } = pattern;
  if (!hydraulics) return undefined;
  const { water, air, rise } = AS_PRINTED;
  const { rows } = deliveryTableQuestion.answer(
    { kit: pattern.id, water, air, suction: { lift: 0 }, discharge: { rise }, lifts: [...TABLE_LIFTS[units]] },
    { patterns: () => pattern },
  );
  return {
    setting: settingWords(pattern, hydraulics, units),
    rows: rows.map(({ lift, flow, band, because }) =>
      flow > 0 ? { lift, flow, low: band.low, high: band.high, because } : { lift, because },
    ),
  };
}

function settingWords(pattern: Pattern, { suction, discharge }: PatternHydraulics, units: UnitSystem): string {
  const length = (si: number): string => formatQuantity(si, "length", { unit: units === "us" ? "ft" : "m", digits: 2 });
  const water = `sea water of ${formatQuantity(AS_PRINTED.water.temperature, "temperature", { system: units, digits: 2 })}`;
  const speed = pattern.engine ? "Full throttle" : "Full speed";
  const end = suction
    ? `suction hose ${length(suction.length)}, the hose's end ${length(AS_PRINTED.rise)} above the pump`
    : "the lift is the height of the hose's end above the water";
  return `${speed}, ${water}, sea level, hoses as packed: discharge hose ${length(discharge.length)}, ${end}.`;
}
