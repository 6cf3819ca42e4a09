import { z } from "zod";
import { BOAT_KINDS } from "../casualty/casualty-hull.ts";
import { BOAT_LIMITS, LEVEL_LIMITS } from "../casualty/casualty-limits.ts";
import type { Said } from "./said.ts";
import { amountTo, countTo, id, instant, line, note } from "./schema-parts.ts";

/* What is said of a casualty: the state keeps nearly all of it as it was said. */

const metres = (most: number) => {
  const allowed = { error: `more than 0 m, at most ${most} m` };
  return z.number({ error: "a number of metres" }).gt(0, allowed).max(most, allowed);
};

const SHORTEST = { error: `at least ${BOAT_LIMITS.length.atLeast} m` };

export const boat = z.strictObject({
  kind: z.enum(BOAT_KINDS),
  length: metres(BOAT_LIMITS.length.atMost).min(BOAT_LIMITS.length.atLeast, SHORTEST),
  beam: metres(BOAT_LIMITS.beam.atMost).exactOptional(),
  /** Keel to deck edge. */
  depth: metres(BOAT_LIMITS.depth.atMost).exactOptional(),
  /** As she floated dry: of the hull, or of a sailing yacht to the foot of her keel. */
  draught: metres(BOAT_LIMITS.draught.atMost).exactOptional(),
});
/** What is known of the boat. Lengths in [m]; what nobody knows is left out. */
export type CasualtyBoat = Said<typeof boat>;

export const space = z.strictObject({
  id,
  name: line(60),
  sort: z.enum(["engine-room", "cabin", "hold", "open"]),
  part: z.enum(["aft", "middle", "forward", "whole"]),
});
/** A space water stands in: what is in it, and which part of her length it takes up. */
export type CasualtySpace = Said<typeof space>;

export const hole = z.strictObject({
  diameter: metres(1).exactOptional(),
  /** Below the waterline. */
  depth: metres(6).exactOptional(),
});
/** What is known of the hole [m]. */
export type CasualtyHole = Said<typeof hole>;

export const told = z.strictObject({
  /** RFC 3339, when it was told. */
  at: instant,
  /** Over the floor [m]. */
  water: amountTo(6).exactOptional(),
  /** At one mark [m/s]. */
  rising: amountTo(0.1).exactOptional(),
});
/** What her skipper told by radio of the water in her, before anybody of ours was there to sound it. */
export type CasualtyTold = Said<typeof told>;

export const situation = z
  .strictObject({
    position: line(200).exactOptional(),
    drift: line(200).exactOptional(),
    tide: line(200).exactOptional(),
    /** Kits of other stations, and when they can be there. */
    otherKits: line(500).exactOptional(),
  })
  .refine((given) => Object.keys(given).length > 0, { error: "position, drift, tide or other kits" });
/** Where she is and who else can help, in the words in which it was told. */
export type CasualtySituation = Said<typeof situation>;

const taken = {
  /** RFC 3339, when it was seen or done; the entry's own time if left out. */
  taken: instant.exactOptional(),
};

/** Of a line that was written down later than what it tells of. */
export interface WrittenLate {
  /** RFC 3339, when it was seen or done; the entry's own time if left out. */
  readonly taken?: string;
}

export const soundingTaken = z.strictObject({
  space: id,
  /** Above the lowest point of the space [m]. */
  level: amountTo(LEVEL_LIMITS.atMost),
  text: line(40),
  ...taken,
});
export type SoundingTaken = Said<typeof soundingTaken>;

export const pumpSet = z.strictObject({
  ...taken,
  /** Id of the pump on this casualty; the kit's own where it is a kit. */
  pump: id,
  name: line(80),
  /** Space it draws from. */
  space: id,
  running: z.boolean(),
  /** What it is taken to move at this setting [m³/s]. */
  flow: amountTo(1),
  /** Speed ratio. */
  throttle: amountTo(1.2).exactOptional(),
  /** From the water to the pump [m]. */
  lift: z.number().min(-5).max(15).exactOptional(),
  /** On one tank, reserve kept back [s]. */
  runtime: z.number().gt(0).max(172_800).exactOptional(),
  kit: id.exactOptional(),
});
export type PumpSet = Said<typeof pumpSet>;
/** How a pump is set from now on. */
export type PumpSetting = Omit<PumpSet, "taken">;

const sign = z.enum(["water", "no-water", "sucks-air", "weak", "wont-start"]);
/** What somebody beside a pump sees of it. */
export type PumpSign = Said<typeof sign>;

export const pumpSeen = z.strictObject({ pump: id, sign, ...taken });
export type PumpSeen = Said<typeof pumpSeen>;

export const pumpStartTold = z
  .strictObject({
    pump: id,
    pulls: countTo(200).exactOptional(),
    primeSeconds: amountTo(3_600).exactOptional(),
    ...taken,
  })
  .refine(({ pulls, primeSeconds }) => pulls !== undefined || primeSeconds !== undefined, {
    error: "pulls, or seconds to water",
  });
export type PumpStartTold = Said<typeof pumpStartTold>;

export const holePatched = z.strictObject({ space: id, open: amountTo(10), ...taken });
export type HolePatched = Said<typeof holePatched>;

export const stabilitySeen = z
  .strictObject({
    /** To starboard [rad]. */
    list: z.number().min(-1.4).max(1.4).exactOptional(),
    /** A full roll out and back [s]. */
    rollPeriod: z.number().gt(0).max(60).exactOptional(),
    righting: z.enum(["comes-back", "slowly", "stays"]).exactOptional(),
    deckEdge: z.enum(["clear", "awash", "under"]).exactOptional(),
    /** Water comes in over a sill, a coaming or an open hatch. */
    overSill: z.boolean().exactOptional(),
    /** By the stern, over her length; by the bow below zero [m]. */
    trim: z.number().min(-3).max(3).exactOptional(),
    /** Her own skipper says to leave her. */
    leaving: z.boolean().exactOptional(),
  })
  .refine((given) => Object.keys(given).length > 0, { error: "something seen of her" });
/** What is seen of her: angles and lengths as far as people can tell them. */
export type StabilitySeen = Said<typeof stabilitySeen>;
/** How she comes back from a roll. */
export type Righting = NonNullable<StabilitySeen["righting"]>;
/** Her lowest deck edge against the water outside. */
export type DeckEdge = NonNullable<StabilitySeen["deckEdge"]>;

export const towSet = z.strictObject({ under: z.boolean() });
export type TowSet = Said<typeof towSet>;

const sameOnBoth = z.strictObject({
  /** Its id on the other sheet. */
  other: id,
  /** Its id on the sheet that the line is about. */
  own: id,
});
/** One thing that two sheets of a casualty each have under an id of their own. */
export type SameOnBoth = Said<typeof sameOnBoth>;
const same = z.array(sameOnBoth).max(50);

export const casualtyJoined = z.strictObject({
  with: id,
  spaces: same.exactOptional(),
  pumps: same.exactOptional(),
});
export type CasualtyJoined = Said<typeof casualtyJoined>;

export const casualtyNoted = z.strictObject({ about: z.enum(["people", "boat", "other"]), note });
export type CasualtyNoted = Said<typeof casualtyNoted>;

export const casualtyClosed = z.strictObject({
  outcome: z.enum(["afloat", "towed-in", "beached", "lost", "stood-down"]),
  note: note.exactOptional(),
  /** Pumps of this casualty left running: told at the closing. */
  leftRunning: z.array(id).max(50).exactOptional(),
  /** Kits left aboard: told at the closing. */
  leftAboard: z.array(id).max(50).exactOptional(),
  /** Share of its stated flow that the page believed of each pump when the sheet was closed. */
  delivered: z
    .array(z.strictObject({ pump: id, p05: amountTo(10), p50: amountTo(10), p95: amountTo(10) }))
    .max(50)
    .exactOptional(),
});
export type CasualtyClosed = Said<typeof casualtyClosed>;
/** How it ended, or how it left our hands. */
export type CasualtyOutcome = CasualtyClosed["outcome"];

export const reviewNoted = z.strictObject({
  about: z.enum(["went-well", "went-badly", "kit", "pattern", "card"]),
  note,
  pump: id.exactOptional(),
});
export type ReviewNoted = Said<typeof reviewNoted>;
/** What a note of a review is about. */
export type ReviewAbout = ReviewNoted["about"];

const forecast = z.strictObject({
  /** `lower`: the level stands lower at the next sounding. `start`: the kit starts and gives water. */
  of: z.enum(["lower", "start"]),
  /** RFC 3339: when it was made. */
  at: instant,
  /** [1] */
  chance: amountTo(1),
  came: z.boolean(),
  kit: id.exactOptional(),
  /** How far off the level was that was told, spread and all, and the level it was told from [m]. */
  off: z.strictObject({ told: amountTo(100), stayed: amountTo(100) }).exactOptional(),
});
/** One forecast and what came of it. */
export type KeptForecast = Said<typeof forecast>;

export const casualtyReviewed = z.strictObject({
  forecasts: z.array(forecast).max(500),
  note: note.exactOptional(),
});
export type CasualtyReviewed = Said<typeof casualtyReviewed>;
