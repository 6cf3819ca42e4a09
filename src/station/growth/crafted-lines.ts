import type { Entry } from "#log";
import { at, idOf, lines, pumpSet, type Crafted, type Line } from "./crafted-line.ts";
import { CRAFTED_SHEETS } from "./crafted-sheets.ts";

const kit = (count: number, line: (number: number) => Line) => lines("kit:k", count, line);
const casualty = (count: number, line: (number: number) => Line) => lines("casualty:c", count, line);

function answered(turnaround: string, step: string, answer: string): Line {
  return { kind: "step-answered", body: { turnaround, step, answer } };
}

function raised(finding: number): Line {
  const body = { finding: `f${finding}`, item: "cells", mode: "flat", effect: "grounds", photos: [] };
  return { kind: "finding-raised", body };
}

function opened(turnaround: string): Line {
  return { kind: "turnaround-opened", body: { turnaround, because: "routine", sealSeen: "1" } };
}

function fitted(item: number, of: object): Line {
  const drawn = { part: "cell", place: "north" };
  return { kind: "item-fitted", body: { item: `i${item}`, fitted: "2027-01-01", quantity: 1, drawn, ...of } };
}

function visitBegun(): Line {
  const drawn = Array.from({ length: 300 }, (_, number) => ({ step: `s${number}`, check: "c" }));
  const of = [{ kit: "k", turnaround: "t", pattern: "small@1", lines: drawn }];
  return {
    kind: "visit-begun",
    body: { places: ["north"], chance: 0.9, share: 0.1, kits: 1, seed: "0".repeat(16), of },
  };
}

/** Answers without sight of each other, on top of a chain that has to be walked to know that. */
function deepBlindness(count: number): readonly Entry[] {
  return kit(count, (number) => {
    const isDeep = number % 2 === 1;
    const after = isDeep && number > 1 ? { after: [idOf(number - 2)] } : {};
    return { ...answered("t", `s${Math.floor(number / 2) % 50}`, isDeep ? "seen" : "wrong"), ...after };
  });
}

/** Sixteen named each, none of which is there; then the same in a ring. */
function strangers(count: number): readonly Entry[] {
  return kit(count, (number) => ({
    ...answered("t", `s${number % 50}`, number % 3 === 0 ? "seen" : "wrong"),
    after: Array.from({ length: 16 }, (_, one) => idOf(1_000_000 + number * 16 + one)),
  }));
}

function ring(count: number): readonly Entry[] {
  return kit(count, (number) => ({
    ...answered("t", `s${number % 50}`, number % 3 === 0 ? "seen" : "wrong"),
    after: Array.from({ length: 16 }, (_, one) => idOf((number + 1 + one * 97) % count)),
  }));
}

/** Every second line strikes the one before it; the rest strike strikes. */
function strikes(count: number): readonly Entry[] {
  return kit(count, (number) =>
    number < count / 2
      ? { kind: "mustered", body: { sealSeen: "1", containerSound: true } }
      : { kind: "struck", body: { entry: idOf(number - Math.floor(count / 2)), reason: "x" } },
  );
}

function settlings(count: number): readonly Entry[] {
  return kit(count, (number) => {
    if (number < count / 3) return answered(`t${number}`, "s", "seen");
    if (number % 2 === 0) return { ...opened(`o${number}`), device: `d${number % 5}` };
    return { kind: "settled", body: { entries: [idOf(number - 1), idOf(number - 3)], stands: idOf(number - 1) } };
  });
}

/** By what they are made to slow down. */
export const CRAFTED: Readonly<Record<string, Crafted>> = {
  ...CRAFTED_SHEETS,
  "turnarounds opened one beside the other": (count) => kit(count, (number) => opened(`t${number}`)),
  "turnarounds begun by an answer": (count) => kit(count, (number) => answered(`t${number}`, "s", "seen")),
  "turnarounds opened and closed": (count) =>
    kit(count, (number) => {
      const turnaround = `t${number % Math.ceil(count / 2)}`;
      return number < count / 2 ? opened(turnaround) : { kind: "sealed", body: { turnaround, seal: `${number}` } };
    }),
  "one turnaround closed again and again": (count) =>
    kit(count, (number) => ({ kind: "sealed", body: { turnaround: "t", seal: `${number}` } })),
  "findings raised": (count) => kit(count, raised),
  "findings raised and proved": (count) =>
    kit(count, (number) =>
      number < count / 2
        ? raised(number)
        : { kind: "finding-proved", body: { finding: `f${number - count / 2}`, checks: [] } },
    ),
  "remedies before their findings": (count) =>
    kit(count, (number) =>
      number < count / 2
        ? { kind: "remedy-made", body: { finding: `f${number}`, how: "mended", what: "x" } }
        : raised(count - number),
    ),
  "remedies of one finding": (count) =>
    kit(count, (number) =>
      number === 0 ? raised(0) : { kind: "remedy-made", body: { finding: "f0", how: "mended", what: "x" } },
    ),
  "runs of many turnarounds": (count) =>
    kit(count, (number) => ({
      kind: "pulls-counted",
      body: { turnaround: `t${number % Math.ceil(count / 2)}`, step: "s", pulls: number % 9, started: true },
    })),
  "wrong answers and findings": (count) =>
    kit(count, (number) => (number % 2 === 0 ? answered("t", `s${number}`, "wrong") : raised(number))),
  "answers without sight of each other, over a deep chain": deepBlindness,
  "sixteen strangers named by each": strangers,
  "a ring of names": ring,
  "lines of one visit, drawn and not, after its end too": (count) =>
    lines("visit:v", count, (number) => {
      if (number === 0) return visitBegun();
      if (number === Math.floor(count / 2)) return { kind: "visit-ended", body: {} };
      const line = { kit: "k", step: `s${number % 600}`, check: "c" };
      return { kind: "line-reexamined", body: { ...line, answer: "seen" }, after: [idOf(number - 1)] };
    }),
  "strikes of strikes": strikes,
  "differences settled among many": settlings,
  "enrolled again and again": (count) =>
    kit(count, (number) => ({
      kind: "kit-enrolled",
      body: { name: `k${number}`, serial: `s${number}`, items: [] },
    })),
  "soundings written down in the wrong order": (count) =>
    casualty(count, (number) => ({
      kind: "sounding-taken",
      body: { space: "hold", level: 0.1, text: "x", taken: at(-number) },
    })),
  "pumps, and fuel smelt again and again": (count) =>
    casualty(count, (number) =>
      number < count / 2 ? pumpSet(`p${number}`, true) : { kind: "fuel-smelt", body: { note: "x" } },
    ),
  "pumps refuelled": (count) =>
    casualty(count, (number) =>
      number < count / 2
        ? pumpSet(`p${number}`, true)
        : { kind: "pump-refuelled", body: { pump: `p${count - number}` } },
    ),
  "one pump set again and again": (count) => casualty(count, (number) => pumpSet("p", number % 2 === 0)),
  "spaces told of": (count) =>
    casualty(count, (number) => ({
      kind: "casualty-changed",
      body: { space: { id: `s${number}`, name: "x", sort: "hold", part: "aft" } },
    })),
  notes: (count) => casualty(count, () => ({ kind: "casualty-noted", body: { about: "boat", note: "x" } })),
  "closed again and again": (count) =>
    casualty(count, (number) =>
      number < count / 2 ? pumpSet(`p${number}`, true) : { kind: "casualty-closed", body: { outcome: "afloat" } },
    ),
  "parts fitted off a shelf, outside a turnaround": (count) => kit(count, (number) => fitted(number, {})),
  "parts fitted off a shelf, each in a turnaround of its own": (count) =>
    kit(count, (number) => fitted(number, { turnaround: `t${number}` })),
  "parts fitted off a shelf and put right again": (count) =>
    kit(count, (number) => fitted(number % (count / 2), { turnaround: "t" })),
  "parts fitted on ever other devices, none in sight of another": (count) =>
    kit(count, (number) => ({ ...fitted(0, { turnaround: "t" }), device: `d${number}` })),
  "parts fitted on ever other devices, in sight of strangers": (count) =>
    kit(count, (number) => ({
      ...fitted(0, { turnaround: "t" }),
      device: `d${number}`,
      after: Array.from({ length: 16 }, (_, one) => idOf(1_000_000 + number * 16 + one)),
    })),
  "work taken by ever others, none in sight of another": (count) =>
    kit(count, (number) => ({
      kind: "work-taken",
      device: `d${number}`,
      body: { work: "muster", person: `p${number}` },
    })),
  "ever new kits enrolled": (count) =>
    lines("", count, (number) => ({
      subject: `kit:k${number}`,
      pattern: "small@1",
      kind: "kit-enrolled",
      body: { name: `K${number}`, serial: `s${number}`, items: [] },
    })),
  "deliveries measured of ever new kits": (count) =>
    lines("", count, (number) => ({
      subject: `kit:k${number}`,
      pattern: "small@1",
      kind: "delivery-measured",
      body: { turnaround: "t", step: "s", ratio: 0.9 },
    })),
  "back from use again and again": (count) => kit(count, () => ({ kind: "returned", body: { exposure: ["salt"] } })),
  "pumps of ever other kits": (count) =>
    casualty(count, (number) => {
      const { body, ...rest } = pumpSet(`p${number}`, true);
      return { ...rest, body: { ...(body as object), kit: `k${number}` } } as Line;
    }),
  "intervals accepted for many patterns": (count) =>
    lines("station", count, (number) => ({
      kind: "opening-interval-set",
      body: { pattern: `p${number}`, every: "9 months" },
    })),
  "lines brought back again and again": (count) =>
    lines("station", count, () => ({ kind: "lines-brought-back", body: { lines: [idOf(1)], by: "vouched" } })),
  "reports, each answered": (count) =>
    lines("pattern:small", count, (number) =>
      number < count / 2
        ? { kind: "step-reported", body: { step: "s", what: "wrong" } }
        : { kind: "report-answered", body: { report: idOf(number - count / 2), answer: "x" } },
    ),
};
