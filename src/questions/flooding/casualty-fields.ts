import { z } from "zod";
import { kitIn } from "../kit/kit-pattern.ts";
import { quantity } from "../quantity-field.ts";

/** Nothing that floats people is smaller than this [m]. */
const SIZE = { atLeast: 0.01, atMost: 400 };
const HEIGHT = { atLeast: 0, atMost: 60 };

/** What people call a thing; spaces about it are none of it. */
const nameIn = z.string().trim().min(1).max(60);

const sizeFields = {
  length: quantity("length", "Length on the waterline", SIZE),
  beam: quantity("length", "Greatest breadth", SIZE),
  depth: quantity("length", "Keel to deck edge; 1.6 draughts if left out", SIZE).optional(),
  draught: quantity("length", "Draught the form is drawn for", SIZE),
};

const stationIn = z.strictObject({
  x: quantity("length", "From the after end forward", { atLeast: -400, atMost: 400 }),
  offsets: z
    .array(
      z.strictObject({
        z: quantity("length", "Height above the keel", HEIGHT),
        halfBreadth: quantity("length", "Half-breadth at this height", { atLeast: 0, atMost: 50 }),
      }),
    )
    .min(2)
    .max(32)
    .describe("By rising height"),
});

/** A hull in a question. */
export const hullIn = z
  .discriminatedUnion("form", [
    z.strictObject({ form: z.literal("box"), ...sizeFields }),
    z.strictObject({ form: z.literal("wedge"), ...sizeFields }),
    z.strictObject({ form: z.literal("wigley"), ...sizeFields }),
    z.strictObject({
      form: z.literal("family"),
      ...sizeFields,
      blockCoefficient: quantity("ratio", "Displaced volume over length × beam × draught", {
        atLeast: 0.2,
        atMost: 0.95,
      }),
    }),
    z.strictObject({
      form: z.literal("offsets"),
      draught: quantity("length", "Draught she floats at", SIZE).optional(),
      stations: z.array(stationIn).min(2).max(60).describe("By rising x"),
    }),
  ])
  .describe("The hull: box, wedge (V sections), family (by block coefficient), wigley, or a table of offsets");

/** A compartment of a floating boat. */
export const compartmentIn = z.strictObject({
  name: nameIn.optional(),
  from: quantity("length", "After bulkhead, from the after end", { atLeast: 0, atMost: 400 }),
  to: quantity("length", "Forward bulkhead, from the after end", { above: 0, atMost: 400 }),
  permeability: quantity("ratio", "Share of the space water can fill: engine room 0.85, cabin 0.95, full stores 0.6", {
    above: 0,
    atMost: 1,
  }).optional(),
  sideFrom: quantity("length", "Port limit, starboard positive; the shell if left out", {
    atLeast: -50,
    atMost: 50,
  }).optional(),
  sideTo: quantity("length", "Starboard limit; the shell if left out", { atLeast: -50, atMost: 50 }).optional(),
  floor: quantity("length", "Floor above the keel", HEIGHT).optional(),
  top: quantity("length", "Ceiling above the keel; the deck if left out", HEIGHT).optional(),
  level: quantity("length", "Water in it at the start: level above the keel", HEIGHT).optional(),
  water: quantity("volume", "Water in it at the start, in place of level", { atLeast: 0, atMost: 1e5 }).optional(),
});

/** A space with upright sides in a vessel held at a given level. */
export const prismIn = z.strictObject({
  name: nameIn.optional(),
  area: quantity("area", "Plan area", { above: 0, atMost: 1e4 }),
  permeability: quantity("ratio", "Share of the space water can fill; 1 if left out", {
    above: 0,
    atMost: 1,
  }).optional(),
  floor: quantity("length", "Floor above the keel; 0 if left out", HEIGHT).optional(),
  top: quantity("length", "Ceiling above the keel; none if left out", HEIGHT).optional(),
  level: quantity("length", "Level at the start, above the keel", HEIGHT).optional(),
  water: quantity("volume", "Water at the start, in place of level", { atLeast: 0, atMost: 1e5 }).optional(),
});

const coefficient = quantity("ratio", "Discharge coefficient; 0.6, the best estimate, if left out", {
  above: 0,
  atMost: 1,
}).optional();

const placeFields = {
  name: nameIn.optional(),
  compartment: nameIn.optional().describe("Compartment it leads into; the first if left out"),
  from: nameIn.optional().describe("Compartment it leads from; the sea if left out"),
  x: quantity("length", "Forward of the after end; the compartment's middle if left out", {
    atLeast: 0,
    atMost: 400,
  }).optional(),
  y: quantity("length", "To starboard of the centre line", { atLeast: -50, atMost: 50 }).optional(),
};

const holeFields = {
  kind: z.literal("hole"),
  diameter: quantity("length", "Diameter of a round hole, or area", { above: 0, atMost: 5 }).optional(),
  area: quantity("area", "Clear area, in place of diameter", { above: 0, atMost: 20 }).optional(),
  height: quantity("length", "Centre above the keel; the floor of its space if left out", HEIGHT).optional(),
  dischargeCoefficient: coefficient,
};
const slotFields = {
  kind: z.literal("slot"),
  width: quantity("length", "Width of the upright slot", { above: 0, atMost: 50 }),
  sill: quantity("length", "Lower edge above the keel", HEIGHT),
  top: quantity("length", "Upper edge above the keel", HEIGHT),
  dischargeCoefficient: coefficient,
};
const pipeFields = {
  kind: z.literal("pipe"),
  bore: quantity("length", "Inside diameter", { above: 0, atMost: 2 }),
  length: quantity("length", "Length of pipe", { atLeast: 0, atMost: 100 }),
  height: quantity("length", "Height above the keel; the floor of its space if left out", HEIGHT).optional(),
  friction: quantity("ratio", "Darcy friction factor; 0.03 if left out", { above: 0, atMost: 1 }).optional(),
  fittings: quantity("ratio", "Sum of K of entry, bends, valves; 0.5 if left out", {
    atLeast: 0,
    atMost: 1000,
  }).optional(),
};
const deckEdgeFields = {
  kind: z.literal("deck-edge"),
  width: quantity("length", "Length of deck edge the sea comes over", { above: 0, atMost: 200 }),
  sill: quantity("length", "Height of the edge above the keel", HEIGHT),
  dischargeCoefficient: coefficient,
};

/** An opening by itself. */
export const openingIn = z
  .discriminatedUnion("kind", [
    z.strictObject(holeFields),
    z.strictObject(slotFields),
    z.strictObject(pipeFields),
    z.strictObject(deckEdgeFields),
  ])
  .describe("The opening: hole, slot, pipe or deck-edge");

/** An opening in its place; between two compartments it is an internal one. */
export const placedOpeningIn = z
  .discriminatedUnion("kind", [
    z.strictObject({ ...holeFields, ...placeFields }),
    z.strictObject({ ...slotFields, ...placeFields }),
    z.strictObject({ ...pipeFields, ...placeFields, length: pipeFields.length }),
    z.strictObject({ ...deckEdgeFields, ...placeFields }),
  ])
  .describe("An opening in its place: what it is, where it leads, where it is");

const pointsIn = z
  .array(
    z.strictObject({
      flow: quantity("flow", "Delivery", { atLeast: 0, atMost: 10 }),
      head: quantity("length", "At this lift, water to discharge", { atLeast: 0, atMost: 200 }),
    }),
  )
  .min(2)
  .max(100);

const parabolaIn = z.strictObject({
  shutOffHead: quantity("length", "Head at no flow", { above: 0, atMost: 500 }),
  flow: quantity("flow", "A known delivery …", { above: 0, atMost: 10 }),
  head: quantity("length", "… at this head", { atLeast: 0, atMost: 500 }),
});

/** A pump on a flooding boat. */
export const floodPumpIn = z.strictObject({
  name: nameIn.optional(),
  compartment: nameIn.optional().describe("Compartment it draws from; the first if left out"),
  kit: kitIn.optional(),
  flow: quantity("flow", "Steady delivery, in place of a kit or a curve", { atLeast: 0, atMost: 10 }).optional(),
  curve: z
    .union([pointsIn, parabolaIn])
    .optional()
    .describe("Delivery against lift: points, or {shutOffHead, flow, head} for head = shutOffHead − c·flow²"),
  dischargeHeight: quantity(
    "length",
    "Discharge above the keel, with a curve or a kit; her deck edge with a kit if left out",
    HEIGHT,
  ).optional(),
  suctionHeight: quantity(
    "length",
    "Strainer above the keel; on the floor where the water runs to, if left out",
    HEIGHT,
  ).optional(),
  from: quantity("time", "Starts at", { atLeast: 0 }).optional(),
  until: quantity("time", "Stops at", { atLeast: 0 }).optional(),
  runtime: quantity("time", "Runs on one tank; with a kit its own if left out", { above: 0 }).optional(),
  refuelling: quantity("time", "Stands still to refuel; 5 min if left out", { above: 0 }).optional(),
});
