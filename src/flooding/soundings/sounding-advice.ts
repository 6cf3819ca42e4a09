import { numberAt } from "#base";
import { DELIVERY, STRENGTH } from "./sounding-model.ts";
import { chancesWith, type Chances, type ForecastOptions, type Present } from "./sounding-forecast.ts";

export type ActionKind = "second-pump" | "patch-half" | "more-throttle" | "shorter-lift";

/** Something that can be done, and what would come of it. */
export interface Action {
  readonly action: ActionKind;
  readonly chances: Chances;
  /** Chance that the pumps at least hold, and by how much that is more than now. */
  readonly holding: number;
  readonly change: number;
  /** Level at the horizon, median [m]. */
  readonly level: number;
  readonly says: string;
}

/** What each action is taken to be worth where nothing better is known. */
export interface ActionGains {
  /** Delivery of one more kit [m³/s]. Default: what is pumped now. */
  readonly secondPump: number;
  /** Factor on delivery. Default 1.2: an engine at about four fifths of its speed opened up. */
  readonly moreThrottle: number;
  /** Factor on delivery. Default 1.1: about a metre less lift on a small centrifugal pump. */
  readonly shorterLift: number;
}

/** One kit where none runs and nothing is said: 200 L/min through its hoses. */
const ONE_KIT = 0.2 / 60;

/** Ranks what would change the outcome most: by chance of holding, then by the level it leaves. */
export function rankActions(
  all: Present,
  pumped: number,
  options: ForecastOptions,
  gains: Partial<ActionGains>,
): Action[] {
  const some = everyOther(all);
  const now = 1 - chancesWith(some, pumped, options).losing;
  const kit = gains.secondPump ?? (pumped > 0 ? pumped : ONE_KIT);
  const make = (action: ActionKind, flow: number, patched: Present, says: string): Action => {
    const { level, ...chances } = chancesWith(patched, flow, options);
    const holding = 1 - chances.losing;
    return { action, chances, holding, change: holding - now, level, says };
  };
  const actions = [
    make("second-pump", pumped + kit, withKit(some, pumped, kit), "One more kit pumping."),
    make("patch-half", pumped, halved(some), "The hole halved with a plug or a patch."),
  ];
  if (pumped > 0) {
    actions.push(
      make("more-throttle", pumped * (gains.moreThrottle ?? 1.2), some, "The engine opened up to full speed."),
      make("shorter-lift", pumped * (gains.shorterLift ?? 1.1), some, "The pump set lower, about a metre less lift."),
    );
  }
  return actions.sort((a, b) => b.holding - a.holding || a.level - b.level);
}

/** Half of the casualties will do to rank what can be done. */
function everyOther(present: Present): Present {
  return {
    ...present,
    casualties: present.casualties.filter((_, n) => n % 2 === 0),
    levels: present.levels.filter((_, n) => n % 2 === 0),
    ...(present.newShares && { newShares: present.newShares.filter((_, n) => n % 2 === 0) }),
  };
}

/** One more kit moves what a kit moves, not what the pumps aboard have been seen to. */
function withKit(present: Present, pumped: number, kit: number): Present {
  const { newShares } = present;
  if (newShares === undefined) return present;
  const casualties = present.casualties.map((one, n) => {
    const joined = one.slice();
    joined[DELIVERY] = (numberAt(one, DELIVERY) * pumped + numberAt(newShares, n) * kit) / (pumped + kit);
    return joined;
  });
  return { ...present, casualties };
}

function halved(present: Present): Present {
  return {
    ...present,
    casualties: present.casualties.map((one) => {
      const patched = one.slice();
      patched[STRENGTH] = numberAt(patched, STRENGTH) / 2;
      return patched;
    }),
  };
}
