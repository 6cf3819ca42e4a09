import type { Pattern } from "#kit";
import type { CasualtyState, KitState, StepReport } from "#readiness";
import { describe, expect, it } from "vitest";
import { OPENINGS_TO_TELL, reportCard } from "./index.ts";

const step = (id: string, minutes: number, checks: readonly string[] = [], more: object = {}) => ({
  id,
  text: `Do ${id}.`,
  checks,
  needs: { people: 1, minutes, tools: [] },
  ...more,
});
const PATTERN = {
  id: "pump",
  version: 2,
  modes: [
    { id: "seized", item: "pump", name: "seized", effect: "grounds" },
    { id: "dull", item: "pump", name: "dull", effect: "notes" },
    { id: "split", item: "hose", name: "split", effect: "grounds" },
  ],
  checks: [
    { id: "turn", ask: "Turn the shaft.", finds: ["seized"] },
    { id: "paint", ask: "Look at the paint.", finds: ["dull"] },
    { id: "hose", ask: "Look along the hose.", finds: ["split"] },
  ],
  stages: [
    {
      id: "examine",
      steps: [
        step("a", 2, ["turn"]),
        step("b", 2, ["paint"]),
        step("w", 1, [], { timer: { kind: "wait", atLeast: 600 } }),
        step("c", 2, ["hose"]),
      ],
    },
  ],
} as unknown as Pattern;

const T0 = Date.parse("2026-05-01T08:00:00Z");
const mark = (minute: number, by = "ann") => ({
  entry: `e${minute}`,
  at: new Date(T0 + minute * 60_000).toISOString(),
  by,
  device: "tablet",
});
type Line = readonly [line: string, minute: number, answer?: "seen" | "wrong" | "not-possible", more?: object];

function opening(id: string, ...lines: readonly Line[]) {
  const answers = lines.map(([line, minute, answer = "seen", more = {}]) => {
    const [at = "", check] = line.split("/");
    return [line, { turnaround: id, step: at, ...(check && { check }), answer, mark: mark(minute), ...more }];
  });
  return {
    id,
    opened: mark(0),
    answers: Object.fromEntries(answers),
    timers: {},
    closed: { ...mark(99), how: "sealed" },
  };
}

function kit(
  id: string,
  turnarounds: readonly object[],
  findings: readonly object[] = [],
  pattern = "pump@1",
): KitState {
  return { id, pattern, turnarounds, findings, runs: [], contents: {} } as unknown as KitState;
}

const found = (mode: string, more: object = {}) => ({
  id: `${mode}-${JSON.stringify(more)}`,
  mode,
  item: "pump",
  ...more,
});
const USUAL: readonly Line[] = [
  ["a/turn", 2],
  ["b/paint", 4],
  ["w", 20],
  ["c/hose", 23],
];
const many = (times: number) => Array.from({ length: times }, (_, i) => opening(`t${i}`, ...USUAL));
const cardOf = (...kits: KitState[]) => reportCard(PATTERN, kits, []);
/** One line that was not possible in every of so many openings. */
const neverPossible = (times: number) =>
  cardOf(
    kit(
      "k1",
      Array.from({ length: times }, (_, i) => opening(`h${i}`, ["c/hose", 11, "not-possible"])),
    ),
  );

describe("what the checks of a pattern found", () => {
  it("counts each opening once, answers of every version of the pattern, and no other pattern's", () => {
    const other = kit("z", many(9), [], "else@1");
    const { checks, openings, kits } = cardOf(kit("k1", many(3)), kit("k2", many(2), [], "pump@2"), other);
    expect([openings, kits]).toEqual([5, 2]);
    expect(checks.map(({ check, looks, found: hits }) => [check.id, looks, hits])).toEqual([
      ["turn", 5, 0],
      ["paint", 5, 0],
      ["hose", 5, 0],
    ]);
  });

  it("leaves out the openings of a drill, and what was planted for it, but not what was real", () => {
    const planted = found("seized", { turnaround: "t9", check: "turn", drill: "d" });
    const real = found("dull", { turnaround: "t9", check: "paint", drill: "d" });
    const drill = { id: "d", judged: { [real.id]: { real: true } } };
    const drilled = [...many(2), { ...opening("t9", ["a/turn", 2, "wrong"]), drill: "d" }];
    const card = cardOf({ ...kit("k1", drilled, [planted, real]), drills: [drill] } as unknown as KitState);
    expect([card.openings, card.checks[0]!.found]).toEqual([2, 0]);
    expect(card.modes.map(({ mode }) => mode.id)).toEqual(["dull"]);
  });

  it("counts what was wrong and is answered right since it was mended, by its finding; not what could not be looked at", () => {
    const openings = [
      opening("t1", ["a/turn", 2], ["b/paint", 4, "wrong"], ["c/hose", 6, "not-possible", { why: "ice" }]),
    ];
    const { checks } = cardOf(kit("k1", openings, [found("seized", { turnaround: "t1", check: "turn" })]));
    expect(checks.map(({ looks, found: hits }) => [looks, hits])).toEqual([
      [1, 1],
      [1, 1],
      [0, 0],
    ]);
  });

  it("says how rarely one that never did may still find something, and never that it finds nothing", () => {
    const { below } = cardOf(kit("k1", many(59))).checks[1]!;
    expect(below).toBeGreaterThan(0.04);
    expect(below).toBeLessThan(0.05);
    expect(cardOf(kit("k1", [])).checks[0]!.below).toBeUndefined();
  });

  it("leaves out an opening that was set aside", () => {
    const aside = { ...opening("t9", ...USUAL), closed: { ...mark(99), how: "set-aside" } };
    expect(cardOf(kit("k1", [...many(2), aside])).openings).toBe(2);
  });
});

describe("modes found by accident", () => {
  it("are those found at another check, at a line without one, or outside an opening", () => {
    const findings = [
      found("seized", { turnaround: "t0", check: "turn", step: "a" }),
      found("split", { turnaround: "t0", check: "paint", step: "b" }),
      found("split", { turnaround: "t1", step: "w" }),
      found("split"),
    ];
    const { modes } = cardOf(kit("k1", many(3), findings));
    expect(modes.map(({ mode, byOwn, byAccident }) => [mode.id, byOwn, byAccident])).toEqual([
      ["split", 0, 3],
      ["seized", 1, 0],
    ]);
    expect(modes[0]!.where.map(({ what }) => what)).toEqual(["Look at the paint.", "Do w.", "outside an opening"]);
  });
});

const hard = (id: string) => opening(id, ["a/turn", 2], ["c/hose", 5, "not-possible", { why: "frozen" }]);

describe("a report card whose figures hold together", () => {
  it("lists every finding that its kits have: those of no mode of the pattern too, with where they were found", () => {
    const findings = [
      found("seized", { turnaround: "t0", check: "turn" }),
      found("other"),
      found("gone", { step: "w" }),
    ];
    const card = cardOf(kit("k1", many(3), findings));
    expect(card.modes.reduce((sum, { byOwn, byAccident }) => sum + byOwn + byAccident, 0)).toBe(1);
    expect(card.unnamed.byAccident).toBe(2);
    expect(card.unnamed.where.map(({ what }) => what)).toEqual(["outside an opening", "Do w."]);
  });

  it("counts what a check found outside an opening: it is not among those that never found anything", () => {
    const { checks, modes } = cardOf(kit("k1", many(3), [found("seized", { check: "turn" })]));
    expect(modes[0]).toMatchObject({ byOwn: 1, byAccident: 0 });
    expect(checks[0]).toMatchObject({ looks: 3, found: 1 });
    expect(checks[0]).not.toHaveProperty("below");
  });
});

describe("lines that people could not do", () => {
  it("are counted by opening, with what was reported of them", () => {
    const report = { ...mark(1), step: "c", what: "unclear" } as StepReport;
    const { lines } = reportCard(PATTERN, [kit("k1", [hard("t1"), hard("t2"), ...many(2)])], [report]);
    expect(
      lines.map(({ step: { id }, asked, notPossible, reports }) => [id, asked, notPossible, reports.unclear]),
    ).toEqual([["c", 4, 2, 1]]);
  });
});

describe("reports on a line", () => {
  it("stand each in its own words, with the casualty it was told after, newest first", () => {
    const [early, late] = [mark(1), mark(5)];
    const reports = [
      { ...early, step: "c", what: "unclear", note: "which tap?" },
      { ...late, step: "c", what: "impossible", note: "the deck was under water", casualty: "c1" },
    ] as StepReport[];
    const { lines } = reportCard(PATTERN, [kit("k1", many(2))], reports);
    expect(lines[0]!.told.map(({ at, what, note, casualty }) => [at, what, note, casualty])).toEqual([
      [late.at, "impossible", "the deck was under water", "c1"],
      [early.at, "unclear", "which tap?", undefined],
    ]);
  });
});

describe("minutes really taken", () => {
  it("run from the answer before in the same opening, and leave the clock of a wait out", () => {
    const { minutes } = cardOf(kit("k1", many(5)));
    expect(minutes.map(({ step: { id }, median, times }) => [id, median, times])).toEqual([
      ["a", 2, 5],
      ["b", 2, 5],
      ["c", 3, 5],
    ]);
  });

  it("leave a pause out and count it", () => {
    const paused = opening("t9", ["a/turn", 2], ["b/paint", 64], ["c/hose", 66]);
    const line = cardOf(kit("k1", [...many(2), paused])).minutes.find(({ step: { id } }) => id === "b")!;
    expect([line.median, line.times, line.pauses]).toEqual([2, 2, 1]);
  });

  it("leave out what was typed up from a card, and work that two did at once", () => {
    const typed = opening(
      "t8",
      ["a/turn", 2, "seen", { fromCard: true }],
      ["b/paint", 2.5, "seen", { fromCard: true }],
    );
    const two = opening("t9", ["a/turn", 2], ["b/paint", 2.2, "seen", { mark: mark(2.2, "ben") }]);
    const { minutes } = cardOf(kit("k1", [typed, two]));
    expect(minutes.map(({ step: { id } }) => id)).toEqual(["a"]);
  });

  it("share what one tap confirmed by what is stated", () => {
    const together = opening("t1", ["a/turn", 8], ["b/paint", 8]);
    expect(cardOf(kit("k1", [together])).minutes.map(({ median }) => median)).toEqual([4, 4]);
  });
});

const kinds = (card: ReturnType<typeof cardOf>) => card.proposals.map(({ kind }) => kind);

describe("what it would change", () => {
  it("is nothing on few openings, and it says how many more it takes", () => {
    const card = cardOf(kit("k1", many(7), [found("split")]));
    expect(card.proposals).toEqual([]);
    expect(card.openingsWanted).toBe(OPENINGS_TO_TELL - 7);
  });

  it("asks less often what never found anything, but keeps the only check for what grounds the kit", () => {
    const { proposals } = cardOf(kit("k1", many(60)));
    expect(proposals.flatMap((one) => (one.kind === "ask-less" ? [one.of.check.id] : []))).toEqual(["paint"]);
    expect(proposals.flatMap((one) => (one.kind === "keep" ? one.alone : []))).toEqual(["seized", "split"]);
  });

  it("finds sooner what was found by accident twice and no oftener by its checks", () => {
    expect(kinds(cardOf(kit("k1", many(7), [found("split"), found("split", { note: "x" })])))).toEqual(["find-sooner"]);
  });

  it("rewords a line that is often not possible, and restates one that takes far longer", () => {
    const slow = Array.from({ length: 9 }, (_, i) =>
      opening(`s${i}`, ["a/turn", 2], ["b/paint", 9], ["c/hose", 11, i < 4 ? "not-possible" : "seen"]),
    );
    const { proposals } = cardOf(kit("k1", slow));
    expect(proposals.map(({ kind, of }) => [kind, "step" in of ? of.step.id : ""])).toEqual([
      ["reword", "c"],
      ["restate", "b"],
    ]);
  });

  it("rewords no line that was not possible in fewer than five openings, and says how many more it takes", () => {
    expect([1, 4, 5].map((times) => neverPossible(times).lines[0]!.openingsWanted)).toEqual([4, 1, 0]);
    expect([1, 4, 5].map((times) => kinds(neverPossible(times)))).toEqual([[], [], ["reword"]]);
  });
});

const PROVED = {
  ...PATTERN,
  checks: [...PATTERN.checks, { id: "runs", ask: "Start it.", kind: "prove", finds: ["seized"] }],
  stages: [...PATTERN.stages, { id: "run", steps: [step("s", 2, ["runs"])] }],
} as unknown as Pattern;
const at = (minute: number) => ({ raised: mark(minute) });
/** One start that failed, and two findings raised from it: at the start, and by eye at another line. */
const FAILED = kit(
  "k1",
  [opening("t1", ["a/turn", 2], ["s/runs", 10, "wrong"])],
  [
    found("seized", { turnaround: "t1", check: "runs", step: "s", ...at(10) }),
    found("seized", { turnaround: "t1", step: "w", ...at(12) }),
    found("split", { turnaround: "t1", step: "w", ...at(13) }),
  ],
);

describe("two findings of one start that failed", () => {
  const card = reportCard(PROVED, [FAILED], []);

  it("are both told of, and the card says that they are of one start, which counts once", () => {
    expect(card.modes.reduce((sum, { byOwn, byAccident }) => sum + byOwn + byAccident, 0)).toBe(3);
    expect(card.together).toEqual({ findings: 3, starts: 1 });
  });

  it("found a mode once: by its own check where that found it", () => {
    const seized = card.modes.find(({ mode }) => mode.id === "seized")!;
    expect([seized.byOwn, seized.byAccident, seized.once]).toEqual([1, 1, { byOwn: 1, byAccident: 0 }]);
  });

  it("propose no other check: it was found by accident in one start only", () => {
    const twice = found("split", { turnaround: "t1", step: "a", ...at(14) });
    const one = { ...FAILED, findings: [...FAILED.findings, twice] } as unknown as KitState;
    const { modes, proposals } = reportCard(PROVED, [one], []);
    expect(modes.find(({ mode }) => mode.id === "split")).toMatchObject({ byAccident: 2, once: { byAccident: 1 } });
    expect(proposals).toEqual([]);
  });

  it("are one find of a check outside openings, where a start on a casualty failed", () => {
    const refused = { pump: "p", sign: "wont-start", at: mark(200).at };
    const casualty = { pumps: [{ pump: "p", kit: "k1", runs: [] }], pumpSeen: [refused] } as unknown as CasualtyState;
    const seen = [210, 215].map((minute) => found("seized", { check: "turn", ...at(minute) }));
    const { checks } = reportCard(PROVED, [kit("k1", many(2), seen)], [], [casualty]);
    expect(checks[0]).toMatchObject({ looks: 2, found: 1 });
  });
});

/** How often a report card reads the answers of one opening, of a pattern of so many lines. */
function readsWith(lines: number): number {
  let reads = 0;
  const steps = Array.from({ length: lines }, (_, i) => step(`a${i}`, 2, ["turn"]));
  const long = { ...PATTERN, stages: [{ id: "examine", steps }] } as unknown as Pattern;
  const { answers, ...rest } = opening("t1", ...steps.map(({ id }, i): Line => [`${id}/turn`, i]));
  const watched = Object.defineProperty({ ...rest }, "answers", { enumerable: true, get: () => (reads++, answers) });
  reportCard(long, [kit("k1", [watched])], []);
  return reads;
}

describe("reports on a picture of the card for strangers", () => {
  const card = {
    readByNative: [],
    steps: [
      { id: "prime", part: "no-water" },
      { id: "c", part: "go" },
    ],
  };
  const withCard = { ...PATTERN, stranger: card } as unknown as Pattern;
  const reports = [
    { ...mark(1), step: "c", what: "wrong" },
    { ...mark(2), step: "c", card: true, what: "unclear", note: "which handle?" },
    { ...mark(3), step: "gone", card: true, what: "unclear" },
  ] as StepReport[];

  it("stand at its number as the card shows it, apart from those on a line of the same name", () => {
    const { pictures, lines } = reportCard(withCard, [kit("k1", many(2))], reports);
    expect(pictures.map(({ step: { id }, number, told }) => [id, number, told.map(({ note }) => note)])).toEqual([
      ["c", 1, ["which handle?"]],
    ]);
    expect(lines.map(({ step: { id }, reports: { wrong, unclear } }) => [id, wrong, unclear])).toEqual([["c", 1, 0]]);
  });

  it("are none where the pattern has no card", () => {
    expect(reportCard(PATTERN, [], reports).pictures).toEqual([]);
  });
});

describe("the work of a report card", () => {
  it("reads the answers of an opening as often for a pattern of 80 lines as for one of 4", () => {
    expect(readsWith(80)).toBe(readsWith(4));
  });
});
