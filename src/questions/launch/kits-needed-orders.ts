import { sayDuration } from "#words";

/** What the words for the skipper rest on. */
export interface OrdersGround {
  readonly isOpenBoat: boolean;
  /** Chance that her deck edge is not under when the first kit pumps. */
  readonly afloat: number;
  /** That go with the first boat. */
  readonly kits: number;
  /** Whether a kit of ours can follow where none goes with the first boat. */
  readonly isFollowed: boolean;
  /** Between what the time until the first kit pumps lies, nine times in ten [s]. */
  readonly arrival: { readonly p05: number; readonly p95: number };
  readonly isRiseTold: boolean;
}

/** Below this her people are told to be ready to leave before all else but their lives. */
const LIKELY_AFLOAT = 0.9;

/**
 * What to read to the skipper, in order: short orders in plain language, one breath each. Lives first, then fuel, then
 * what slows the water, then what helps us when we come. Nothing in it says that she is safe or that we shall be in time.
 *
 * @param ground - what is known
 * @returns orders, as they are read out
 * @source common practice of rescue services and of COLREG-free plain speech; this program's judgement
 */
export function ordersFor(ground: OrdersGround): string[] {
  const isDoubtful = ground.kits === 0 || ground.afloat < LIKELY_AFLOAT;
  const all: (string | false)[] = [
    "Everybody into lifejackets now. Count them, and tell me the number.",
    "Everybody up from below, where they can leave her. Nobody goes below alone.",
    isDoubtful && LEAVE,
    "Smell for fuel. If you smell it: stop engines and pumps, touch no switch, no flame, and tell me at once.",
    "If there is no smell of fuel: start every pump you have, and bail.",
    "Find where the water comes in. Shut that seacock. Stuff the hole with cloth or a cushion, and hold it there.",
    "Stop her, or go dead slow. If the hole is in the side, shift weight so that it comes up towards the surface.",
    ground.isOpenBoat ? "Sit low and in the middle of her. Keep her head to the sea." : SHUT,
    !ground.isRiseTold && "Mark the water's level now. Tell me how deep it is, and how deep again in two minutes.",
    comingOf(ground),
    "Clear a place on deck for the pump, away from the hatches, and have a line ready.",
    "Engine pumps give off deadly fumes: they stay on the open deck, never below.",
    !isDoubtful && LEAVE,
    "Stay on this channel. Tell me at once if the water gains, if she lists, or if anyone is hurt.",
  ];
  return all.filter((one): one is string => one !== false);
}

const LEAVE =
  "Get the liferaft or tender ready, and a radio with you. If her deck edge goes under, or she does not come back from a roll, leave her at once: do not wait for us.";
const NO_PUMP = "No pump of ours can come now. Help is being asked for.";
const FOLLOWED = "Our first boat brings no pump. One is to follow: count on none until we tell you when.";
const SHUT = "Shut doors and hatches between the spaces. Leave them shut.";

/** With no kit aboard the first boat her time is no time of a pump, and none is told. */
function comingOf({ kits, isFollowed, arrival }: OrdersGround): string {
  if (kits === 0) return isFollowed ? FOLLOWED : NO_PUMP;
  const times = sayTimes(arrival);
  return `We come with ${kits === 1 ? "one pump" : `${kits} pumps`}. Count on no water over the side for ${times}, perhaps longer.`;
}

/** "35 to 55 minutes": the spread that the answer tells, units spelled out to be read aloud. */
function sayTimes({ p05, p95 }: OrdersGround["arrival"]): string {
  const [from, to] = [p05, p95].map((time) => sayDuration(Math.max(60, time), "estimate"));
  if (from === to) return spellOut(to!);
  const isInMinutes = !to!.includes("h");
  return `${isInMinutes ? from!.replace("\u00a0min", "") : spellOut(from!)} to ${spellOut(to!)}`;
}

function spellOut(time: string): string {
  return time
    .replace("\u00a0min", "\u00a0minutes")
    .replace("\u00a0h", "\u00a0hours")
    .replace(/^1\u00a0minutes$/, "1\u00a0minute");
}
