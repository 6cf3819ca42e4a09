import type { Body } from "../hull/body.ts";
import type { Resting } from "../hull/equilibrium.ts";
import type { Outlook } from "./flood-watch.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** Remembers the last state looked at; where the boat is lost, the last attitude she was afloat in stands for hers. */
export function makeOutlook(body: Body, total: { looks: number }): Outlook {
  let seen: Float64Array | undefined;
  let resting: Resting | undefined;
  let afloat: Afloat | undefined;
  function look(y: Float64Array): Resting {
    if (seen !== undefined && resting !== undefined && sameWater(seen, y, body.names.length)) return resting;
    seen ??= new Float64Array(y.length);
    seen.set(y);
    total.looks += 1;
    resting = body.settle(y);
    if (resting.kind === "afloat") afloat = resting;
    return resting;
  }
  return {
    lie(y) {
      const now = look(y);
      return now.kind === "afloat" ? now : afloat!;
    },
    isLost(y) {
      const now = look(y);
      return now.kind === "afloat" ? undefined : now.because;
    },
  };
}

function sameWater(a: Float64Array, b: Float64Array, count: number): boolean {
  for (let i = 0; i < count; i += 1) if (a[i] !== b[i]) return false;
  return true;
}
