import type { Entry } from "#log";

/** Lines for tests: any mix of kinds by several devices that see little of each other, from a fixed seed. */
export interface Mix {
  readonly seed: number;
  readonly lines: number;
  readonly subjects: readonly string[];
}

type Draw = <Item>(items: readonly Item[]) => Item;
type Body = (draw: Draw, number: () => number, past: readonly Entry[]) => object;

const TURNAROUNDS = ["t1", "t2", "t3", "t4"];
const STEPS = ["start", "prime", "run"];
const ITEMS = ["cells", "fuel"];
const FINDINGS = ["f1", "f2", "f3", "f4", "f5"];
const PUMPS = ["p1", "p2", "p3"];
const SPACES = ["engine-room", "hold"];

const KIT_BODIES: Readonly<Record<string, Body>> = {
  "kit-enrolled": (draw) => ({
    name: draw(["One", "Uno"]),
    serial: draw(["S1", "S2"]),
    seal: draw(["100", "101"]),
    items: [{ item: "cells", fitted: "2026-01-01", quantity: 1 }],
  }),
  "kit-renamed": (draw) => ({ name: draw(["Two", "Three"]) }),
  "kit-moved": (draw) => ({ to: draw(["north", "south"]) }),
  "turnaround-opened": (draw) => ({
    turnaround: draw(TURNAROUNDS),
    because: "routine",
    sealSeen: draw(["100", "101", ""]),
  }),
  "step-answered": (draw) => ({
    turnaround: draw(TURNAROUNDS),
    step: draw(STEPS),
    answer: draw(["seen", "wrong"]),
    ...(draw([true, false]) && { check: draw(["look", "pull"]) }),
  }),
  "timer-started": (draw) => ({ turnaround: draw(TURNAROUNDS), step: draw(STEPS) }),
  "timer-stopped": (draw, number) => ({
    turnaround: draw(TURNAROUNDS),
    step: draw(STEPS),
    started: "2026-01-01T00:00:00Z",
    seconds: number(),
    reached: true,
  }),
  "pulls-counted": (draw, number) => ({
    turnaround: draw(TURNAROUNDS),
    step: draw(STEPS),
    pulls: number(),
    started: draw([true, false]),
  }),
  "prime-timed": (draw, number) => ({
    turnaround: draw(TURNAROUNDS),
    step: draw(STEPS),
    seconds: number(),
    primed: true,
  }),
  sealed: (draw) => ({ turnaround: draw(TURNAROUNDS), seal: draw(["100", "101", "102"]) }),
  "closed-grounded": (draw) => ({ turnaround: draw(TURNAROUNDS), reason: "broken" }),
  "handed-over": (draw) => ({ to: draw(["Grey Seal", "Tern"]), method: "boat", sealBroken: draw([true, false]) }),
  returned: () => ({ exposure: ["salt-water"] }),
  mustered: (draw) => ({ sealSeen: draw(["100", "101"]), containerSound: draw([true, false]) }),
  "item-fitted": (draw) => ({ item: draw(ITEMS), fitted: draw(["2026-02-01", "2026-03-01"]), quantity: 1 }),
  "finding-raised": (draw) => ({
    finding: draw(FINDINGS),
    item: "cells",
    mode: "flat",
    effect: draw(["grounds", "limits"]),
    photos: [],
  }),
  "remedy-made": (draw) => ({ finding: draw(FINDINGS), how: "mended", what: "cleaned" }),
  "finding-proved": (draw) => ({
    finding: draw(FINDINGS),
    checks: [{ check: "look", answer: draw(["seen", "wrong"]) }],
  }),
  settled: (draw, _number, past) => {
    const recent = past.slice(-12).map(({ id }) => id);
    return recent.length === 0 ? { entries: [], stands: "" } : { entries: recent, stands: draw(recent), why: "talked" };
  },
};

const CASUALTY_BODIES: Readonly<Record<string, Body>> = {
  "casualty-opened": (draw) => ({
    name: "Tern",
    boat: { kind: "motor boat", length: 9 },
    space: { id: draw(SPACES), name: "Hold", sort: "hold", part: "aft" },
    ...(draw([true, false]) && { note: "two aboard" }),
  }),
  "casualty-changed": (draw) => ({
    name: draw(["Tern", "Arctic Tern"]),
    situation: { tide: draw(["ebb", "flood"]) },
    ...(draw([true, false]) && { space: { id: draw(SPACES), name: "Aft", sort: "cabin", part: "aft" } }),
  }),
  "sounding-taken": (draw, number) => ({ space: draw(SPACES), level: number() / 100, text: "stick", ...late(draw) }),
  "pump-set": (draw, number) => ({
    pump: draw(PUMPS),
    name: "Pump",
    space: draw(SPACES),
    running: draw([true, false]),
    flow: number() / 1000,
    ...late(draw),
  }),
  "pump-seen": (draw) => ({ pump: draw(PUMPS), sign: draw(["water", "weak"]), ...late(draw) }),
  "pump-refuelled": (draw) => ({ pump: draw(PUMPS) }),
  "hole-patched": (draw) => ({ space: draw(SPACES), open: draw([0, 0.5, 1]), ...late(draw) }),
  "stability-seen": (draw, number) => ({ list: number() / 100, righting: draw(["slowly", "stays"]) }),
  "tow-set": (draw) => ({ under: draw([true, false]) }),
  "fuel-smelt": () => ({}),
  "fuel-cleared": () => ({ note: "aired" }),
  "casualty-noted": (draw) => ({ about: draw(["people", "boat"]), note: "seen" }),
  "casualty-closed": () => ({ outcome: "afloat" }),
};

const PATTERN_BODIES: Readonly<Record<string, Body>> = {
  "step-reported": (draw) => ({ step: draw(STEPS), what: draw(["wrong", "unclear"]) }),
  "report-answered": (draw, _number, past) => ({ report: past.length > 0 ? draw(past).id : "", answer: "changed" }),
};

const BODIES: Readonly<Record<string, Readonly<Record<string, Body>>>> = {
  kit: KIT_BODIES,
  casualty: CASUALTY_BODIES,
  pattern: PATTERN_BODIES,
};

function late(draw: Draw): object {
  return draw([true, false]) ? { taken: instant(draw([5, 100, 2000, 9000])) } : {};
}

function instant(second: number): string {
  return new Date(Date.UTC(2027, 0, 1) + second * 1000).toISOString();
}

/** The same lines for the same seed, in the order in which they were made; their times jump back and forth. */
export function randomLines({ seed, lines, subjects }: Mix): readonly Entry[] {
  const next = chance(seed);
  const draw: Draw = (items) => items[Math.floor(next() * items.length)]!;
  const made = new Map<string, Entry[]>();
  return Array.from({ length: lines }, (_, number) => {
    const subject = draw(subjects);
    const past = made.get(subject) ?? [];
    const entry = lineOf(draw, next, { number, subject, past });
    made.set(subject, [...past, entry]);
    return entry;
  });
}

interface Place {
  readonly number: number;
  readonly subject: string;
  readonly past: readonly Entry[];
}

function lineOf(draw: Draw, next: () => number, { number, subject, past }: Place): Entry {
  const isStrike = past.length > 0 && next() < 0.05;
  const bodies = BODIES[subject.split(":", 1)[0]!]!;
  const kind = isStrike ? "struck" : draw(Object.keys(bodies));
  const known = past.slice(0, Math.max(0, past.length - Math.floor(next() * 6)));
  const after = known.slice(-Math.ceil(next() * 3)).map(({ id }) => id);
  const ms = Date.UTC(2027, 0, 1) + number * 1000 + Math.floor((next() - 0.5) * 20_000);
  return {
    id: `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`,
    place: "north",
    subject,
    kind,
    at: new Date(ms).toISOString(),
    by: draw(["ann", "ben"]),
    device: draw(["d1", "d2", "d3"]),
    pattern: "small@1",
    ...(after.length > 0 && next() < 0.9 && { after }),
    body: isStrike
      ? { entry: draw(past).id, reason: "slip" }
      : bodies[kind]!(draw, () => Math.floor(next() * 90), past),
  };
}

/** @source Mulberry32, Ettinger 2017, public domain | FROM MEMORY */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let word = Math.imul(state ^ (state >>> 15), state | 1);
    word ^= word + Math.imul(word ^ (word >>> 7), word | 61);
    return ((word ^ (word >>> 14)) >>> 0) / 4_294_967_296;
  };
}
