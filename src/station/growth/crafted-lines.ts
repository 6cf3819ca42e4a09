import type { Entry } from "#log";

/** Lines that somebody made to hold readers up: as many as asked for, all about one subject. */
export type Crafted = (lines: number) => readonly Entry[];

const START = Date.UTC(2027, 0, 1);

function idOf(number: number): string {
  return `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`;
}

function at(number: number): string {
  return new Date(START + number * 1000).toISOString();
}

type Line = Pick<Entry, "kind" | "body"> & Partial<Entry>;

function lines(subject: string, count: number, line: (number: number) => Line): readonly Entry[] {
  return Array.from({ length: count }, (_, number) => ({
    id: idOf(number),
    place: "north",
    subject,
    at: at(number),
    by: "mallory",
    device: `d${number % 2}`,
    ...line(number),
  }));
}

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

function pumpSet(pump: string, running: boolean): Line {
  return { kind: "pump-set", body: { pump, name: pump, space: "hold", running, flow: 0.01 } };
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
  "reports, each answered": (count) =>
    lines("pattern:small", count, (number) =>
      number < count / 2
        ? { kind: "step-reported", body: { step: "s", what: "wrong" } }
        : { kind: "report-answered", body: { report: idOf(number - count / 2), answer: "x" } },
    ),
};
