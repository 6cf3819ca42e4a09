import { z } from "zod";
import { BOAT_LIMITS, LEVEL_LIMITS } from "../casualty/casualty-limits.ts";
import { amountTo, countTo, id, instant, line, note } from "./schema-parts.ts";

const metres = (most: number) => {
  const allowed = { error: `more than 0 m, at most ${most} m` };
  return z.number({ error: "a number of metres" }).gt(0, allowed).max(most, allowed);
};

const SHORTEST = { error: `at least ${BOAT_LIMITS.length.atLeast} m` };

const boat = z.strictObject({
  kind: z.enum(["open boat", "motor boat", "sailing yacht", "fishing boat"]),
  length: metres(BOAT_LIMITS.length.atMost).min(BOAT_LIMITS.length.atLeast, SHORTEST),
  beam: metres(BOAT_LIMITS.beam.atMost).exactOptional(),
  depth: metres(BOAT_LIMITS.depth.atMost).exactOptional(),
  draught: metres(BOAT_LIMITS.draught.atMost).exactOptional(),
});

const space = z.strictObject({
  id,
  name: line(60),
  sort: z.enum(["engine-room", "cabin", "hold", "open"]),
  part: z.enum(["aft", "middle", "forward", "whole"]),
});

const hole = z.strictObject({ diameter: metres(1).exactOptional(), depth: metres(6).exactOptional() });

const told = z.strictObject({
  at: instant,
  water: amountTo(6).exactOptional(),
  rising: amountTo(0.1).exactOptional(),
});

const situation = z
  .strictObject({
    position: line(200).exactOptional(),
    drift: line(200).exactOptional(),
    tide: line(200).exactOptional(),
    otherKits: line(500).exactOptional(),
  })
  .refine((given) => Object.keys(given).length > 0, { error: "position, drift, tide or other kits" });

const same = z.array(z.strictObject({ other: id, own: id })).max(50);

const taken = { taken: instant.exactOptional() };

const pumpSetting = z.strictObject({
  ...taken,
  pump: id,
  name: line(80),
  space: id,
  running: z.boolean(),
  flow: amountTo(1),
  throttle: amountTo(1.2).exactOptional(),
  lift: z.number().min(-5).max(15).exactOptional(),
  runtime: z.number().gt(0).max(172_800).exactOptional(),
  kit: id.exactOptional(),
});

/** Bodies of entries about a casualty. */
export const casualtySchemas = {
  "casualty-opened": z.strictObject({
    name: line(120),
    boat,
    space,
    hole: hole.exactOptional(),
    told: told.exactOptional(),
    situation: situation.exactOptional(),
    note: note.exactOptional(),
  }),
  "casualty-changed": z.strictObject({
    name: line(120).exactOptional(),
    boat: boat.exactOptional(),
    space: space.exactOptional(),
    hole: hole.exactOptional(),
    situation: situation.exactOptional(),
  }),
  "sounding-taken": z.strictObject({
    space: id,
    level: amountTo(LEVEL_LIMITS.atMost),
    text: line(40),
    ...taken,
  }),
  "pump-set": pumpSetting,
  "pump-seen": z.strictObject({
    pump: id,
    sign: z.enum(["water", "no-water", "sucks-air", "weak", "wont-start"]),
    ...taken,
  }),
  "pump-start-told": z
    .strictObject({
      pump: id,
      pulls: countTo(200).exactOptional(),
      primeSeconds: amountTo(3_600).exactOptional(),
      ...taken,
    })
    .refine(({ pulls, primeSeconds }) => pulls !== undefined || primeSeconds !== undefined, {
      error: "pulls, or seconds to water",
    }),
  "pump-refuelled": z.strictObject({ pump: id }),
  "hole-patched": z.strictObject({ space: id, open: amountTo(10), ...taken }),
  "stability-seen": z
    .strictObject({
      list: z.number().min(-1.4).max(1.4).exactOptional(),
      rollPeriod: z.number().gt(0).max(60).exactOptional(),
      righting: z.enum(["comes-back", "slowly", "stays"]).exactOptional(),
      deckEdge: z.enum(["clear", "awash", "under"]).exactOptional(),
      overSill: z.boolean().exactOptional(),
      trim: z.number().min(-3).max(3).exactOptional(),
      leaving: z.boolean().exactOptional(),
    })
    .refine((given) => Object.keys(given).length > 0, { error: "something seen of her" }),
  "tow-set": z.strictObject({ under: z.boolean() }),
  "fuel-smelt": z.strictObject({ note: note.exactOptional() }),
  "fuel-cleared": z.strictObject({ note }),
  "casualty-joined": z.strictObject({ with: id, spaces: same.exactOptional(), pumps: same.exactOptional() }),
  "casualty-noted": z.strictObject({ about: z.enum(["people", "boat", "other"]), note }),
  "casualty-closed": z.strictObject({
    outcome: z.enum(["afloat", "towed-in", "beached", "lost", "stood-down"]),
    note: note.exactOptional(),
    leftRunning: z.array(id).max(50).exactOptional(),
    leftAboard: z.array(id).max(50).exactOptional(),
    delivered: z
      .array(z.strictObject({ pump: id, p05: amountTo(10), p50: amountTo(10), p95: amountTo(10) }))
      .max(50)
      .exactOptional(),
  }),
  "review-noted": z.strictObject({
    about: z.enum(["went-well", "went-badly", "kit", "pattern"]),
    note,
    pump: id.exactOptional(),
  }),
  "casualty-reviewed": z.strictObject({
    forecasts: z
      .array(
        z.strictObject({
          of: z.enum(["lower", "start"]),
          at: instant,
          chance: amountTo(1),
          came: z.boolean(),
          kit: id.exactOptional(),
        }),
      )
      .max(500),
    note: note.exactOptional(),
  }),
};
