import type { Body } from "../hull/body.ts";
import type { FloodSample } from "./flood-case.ts";
import type { Outlook } from "./flood-watch.ts";
import { SEA, surfaceAt, type Piping } from "../openings/flows.ts";

type Afloat = Parameters<Body["freeboard"]>[0];

/** What is seen of a run at one instant. */
export function sampleAt(
  run: { readonly body: Body; readonly piping: Piping; readonly outlook: Outlook },
  at: number,
  y: Float64Array,
): FloodSample {
  return sampleOf(run, at, y, { resting: run.outlook.lie(y) });
}

/** What is seen of a boat lying so; of one only held so, no attitude. */
export function sampleOf(
  { body, piping }: { readonly body: Body; readonly piping: Piping },
  at: number,
  y: Float64Array,
  { resting, isHeld = false }: { readonly resting: Afloat; readonly isHeld?: boolean },
): FloodSample {
  piping.refresh(resting, y);
  const attitude = isHeld ? undefined : attitudeOf(body, resting);
  return {
    at,
    levels: record(body, (i) => {
      const middle = body.middles[i]!;
      return Math.max(middle.floor, surfaceAt(resting, i, middle.x, middle.y));
    }),
    water: record(body, (i) => Math.max(0, y[i]!)),
    inflow: inflowOf(piping),
    pumped: pumpedOf(piping),
    ...(attitude === undefined ? {} : { attitude }),
  };
}

function record(body: Body, valueOf: (index: number) => number): Record<string, number> {
  const { names } = body;
  if (names.length === 1) return { [names[0]!]: valueOf(0) };
  return Object.fromEntries(names.map((name, i) => [name, valueOf(i)]));
}

function inflowOf({ openings, flows }: Piping): number {
  let sum = 0;
  for (let j = 0; j < openings.length; j += 1) if (openings[j]!.from === SEA) sum += flows[j]!;
  return sum;
}

function pumpedOf({ openings, pumps, flows }: Piping): number {
  let sum = 0;
  for (let k = 0; k < pumps.length; k += 1) sum += flows[openings.length + k]!;
  return sum;
}

function attitudeOf(body: Body, resting: Afloat): FloodSample["attitude"] | undefined {
  if (body.hull === undefined) return undefined;
  const { height, slopeX, slopeY } = resting.plane;
  const { length } = body.hull;
  return {
    draught: height + (slopeX * length) / 2,
    heel: Math.atan(slopeY),
    trim: -slopeX * length,
    freeboard: body.freeboard(resting)!,
    stiffness: resting.stiffness,
    gm: resting.stiffness / resting.volume,
  };
}
