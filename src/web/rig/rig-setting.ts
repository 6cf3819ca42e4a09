import { deliveryCurveQuestion, deliveryQuestion, deliveryTableQuestion, TABLE_LIFTS } from "#questions";
import { isInputError, parseQuantity, type UnitSystem } from "#base";
import type { Pattern, PatternHydraulics } from "#kit";

/** How a kit is rigged and where, as the person set it; SI. */
export interface RigSetting {
  /** Pump above the water it takes [m]; 0 for a pump that stands in the water. */
  readonly lift: number;
  /** End of the discharge hose above the pump, or above the water for one that stands in it [m]. */
  readonly rise: number;
  readonly suctionLength: number;
  readonly dischargeLength: number;
  /** Running speed over full speed [1]. */
  readonly throttle: number;
  readonly water: "sea" | "fresh";
  /** [K] */
  readonly waterTemperature: number;
  /** [m] */
  readonly altitude: number;
  readonly pumps: number;
}

/** A pattern that says what its pump does. */
export type PumpPattern = Pattern & { readonly hydraulics: PatternHydraulics };

/** The pattern, where it says what its pump does. */
export function pumpPattern(pattern: Pattern): PumpPattern | undefined {
  return pattern.hydraulics && { ...pattern, hydraulics: pattern.hydraulics };
}

/** True for a pump that is put into the water itself. */
export function standsInWater({ hydraulics }: PumpPattern): boolean {
  return hydraulics.suction === undefined;
}

const OPEN_SEA = 35;
const FOOT = parseQuantity("1 ft", "length");
/** Where the person has set nothing yet: round in their own units. */
const FIRST: Readonly<Record<UnitSystem, { lift: number; rise: number; riseFromWater: number }>> = {
  metric: { lift: 2, rise: 1, riseFromWater: 2 },
  us: { lift: 6 * FOOT, rise: 3 * FOOT, riseFromWater: 6 * FOOT },
};
/** 12 °C: home waters, most of the year. */
const FIRST_WATER = 285.15;

/** How a kit stands before anybody has set anything: hoses as packed, full throttle, sea water, sea level. */
export function firstSetting(pattern: PumpPattern, units: UnitSystem): RigSetting {
  const first = FIRST[units];
  const { suction, discharge } = pattern.hydraulics;
  return {
    lift: suction ? first.lift : 0,
    rise: suction ? first.rise : first.riseFromWater,
    suctionLength: suction?.length ?? 0,
    dischargeLength: discharge.length,
    throttle: 1,
    water: "sea",
    waterTemperature: FIRST_WATER,
    altitude: 0,
    pumps: 1,
  };
}

/** The surroundings of a setting as questions take them. */
export function surroundingsOf(setting: Pick<RigSetting, "water" | "waterTemperature" | "altitude">) {
  const salinity = setting.water === "sea" ? OPEN_SEA : 0;
  return { water: { temperature: setting.waterTemperature, salinity }, air: { altitude: setting.altitude } };
}

/** A setting as the question `delivery` takes it. */
export function deliveryInput(pattern: PumpPattern, setting: RigSetting) {
  const suction = standsInWater(pattern) ? {} : { length: setting.suctionLength };
  return {
    kit: pattern.id,
    ...surroundingsOf(setting),
    throttle: setting.throttle,
    suction: { lift: setting.lift, ...suction },
    discharge: { rise: setting.rise, length: setting.dischargeLength },
    pumpsInParallel: setting.pumps,
  };
}

/** The pattern at hand, whatever id a question names: a kit is asked about by the version it is built to. */
export function knowing(pattern: Pattern): { readonly patterns: () => Pattern } {
  return { patterns: () => pattern };
}

/** What the page shows of one setting. */
export type RigAnswer =
  | {
      readonly kind: "answered";
      readonly delivery: ReturnType<typeof deliveryQuestion.answer>;
      readonly curve: ReturnType<typeof deliveryCurveQuestion.answer>;
      readonly table: ReturnType<typeof deliveryTableQuestion.answer>;
    }
  | { readonly kind: "refused"; readonly error: unknown };

/** Asks everything the page shows of a setting; fast enough to ask again at every tap. */
export function askRig(pattern: PumpPattern, setting: RigSetting, units: UnitSystem): RigAnswer {
  const [input, context] = [deliveryInput(pattern, setting), knowing(pattern)];
  try {
    return {
      kind: "answered",
      delivery: deliveryQuestion.answer(input, context),
      curve: deliveryCurveQuestion.answer(input, context),
      table: deliveryTableQuestion.answer({ ...input, lifts: [...TABLE_LIFTS[units]] }, context),
    };
  } catch (cause) {
    if (!isInputError(cause)) throw cause;
    return { kind: "refused", error: cause };
  }
}
