import type { Pattern, Step } from "#kit";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { ENGLISH, inWords } from "#words";
import { Hand, kitFrom, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { recordOf } from "../kit/record.ts";
import { sealingRefusals } from "../kit/sealing.ts";
import type { Lent } from "../kinds/kit-parts.ts";
import { outlookOf, standingOf } from "../standing/standing.ts";
import { workLinesOf } from "../work/work-lines.ts";
import { flushDue } from "./index.ts";
import { sayRefusal } from "../kit/refusal.ts";
import { standingInWords } from "../standing/in-words.ts";

const HOUR = 3_600_000;
const BACK = Date.parse("2026-01-10T08:02:00Z");

/** The sample pattern with a wash for oil, and what it says of salt and oil. */
const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  stages: SAMPLE_PATTERN.stages.map((stage) =>
    stage.id === "restow" ? { ...stage, steps: [wash(stage.steps[0]!), ...stage.steps] } : stage,
  ),
  afterUse: {
    met: [
      { ...metAs("salt", 3_600), flushedBy: ["open"] },
      { ...metAs("oil", 7_200), flushedBy: ["open", "wash-oil"] },
    ],
    counted: [{ item: "pump", missing: "pump-seized" }],
  },
};

function wash(like: Step): Step {
  return { ...like, id: "wash-oil", text: "Wash the oil out.", checks: [], stows: [], renews: [], after: ["oil"] };
}

function metAs(what: "salt" | "oil", flushWithin: number) {
  return { what, flushWithin, source: "The manual of the sample pump.", cautions: [], firstAid: ["Rinse it."] };
}

/** Enrolled and handed over at 08:00 and 08:01. */
function away(): Hand {
  const hand = new Hand().enrol();
  hand.write("handed-over", { to: "the vessel", method: "line", sealBroken: true });
  return hand;
}

function unanswered(hand: Hand): readonly string[] {
  const kit = kitOf(hand);
  const turnaround = kit.turnaround!;
  return sealingRefusals({ kit, turnaround, pattern: PATTERN, allKits: [kit] }).map((one) =>
    sayRefusal(one, ENGLISH.held),
  );
}

describe("a kit that comes back from use", () => {
  it("says until when it must be flushed, by its pattern, from when it last pumped or else from its return", () => {
    const hand = away();
    hand.write("returned", { exposure: ["oil", "salt"] });
    expect(flushDue(kitOf(hand), PATTERN)).toMatchObject({
      by: BACK + HOUR,
      from: BACK,
      isFromStop: false,
      first: { what: "salt", source: "The manual of the sample pump." },
      all: [{ what: "salt" }, { what: "oil" }],
    });
    const known = away();
    known.write("returned", { exposure: ["salt"], stopped: "2026-01-10T06:00:00Z" });
    expect(flushDue(kitOf(known), PATTERN)).toMatchObject({ by: BACK - 2 * HOUR - 120_000 + HOUR, isFromStop: true });
  });

  it("goes by common practice where the pattern says nothing, and says so", () => {
    const hand = away();
    hand.write("returned", { exposure: ["fuel"] });
    expect(flushDue(kitOf(hand), PATTERN)).toMatchObject({
      by: BACK + HOUR,
      first: { what: "fuel", source: expect.stringContaining("Common practice") },
    });
  });

  it("counts from the return where the stop is told for later than the return", () => {
    const hand = away();
    hand.write("returned", { exposure: ["salt"], stopped: "2026-01-10T12:00:00Z" });
    expect(flushDue(kitOf(hand), PATTERN)).toMatchObject({ from: BACK, isFromStop: false });
  });

  it("has no clock where it met nothing, once it was flushed, or once the steps that flush it were seen done", () => {
    const clean = away();
    clean.write("returned", { exposure: [] });
    expect(flushDue(kitOf(clean), PATTERN)).toBeUndefined();
    const flushed = away();
    flushed.write("returned", { exposure: ["salt"] });
    flushed.write("flushed", {});
    expect(flushDue(kitOf(flushed), PATTERN)).toBeUndefined();
    const hand = away();
    hand.write("returned", { exposure: ["salt", "oil"] });
    hand.open().write("step-answered", { turnaround: "t1", step: "open", answer: "seen" });
    expect(flushDue(kitOf(hand), PATTERN)?.all.map(({ what }) => what)).toEqual(["oil"]);
    hand.write("step-answered", { turnaround: "t1", step: "wash-oil", answer: "seen" });
    expect(flushDue(kitOf(hand), PATTERN)).toBeUndefined();
  });

  it("starts the clock again when it goes out and meets something again", () => {
    const hand = away();
    hand.write("returned", { exposure: ["salt"] });
    hand.write("flushed", {});
    hand.write("handed-over", { to: "another", method: "line", sealBroken: true });
    hand.write("returned", { exposure: ["salt"] });
    expect(flushDue(kitOf(hand), PATTERN)?.from).toBe(BACK + 3 * 60_000);
  });

  it("asks for the steps that belong to what it met, and for no others, until it is sealed", () => {
    const oiled = away();
    oiled.write("returned", { exposure: ["oil"] });
    oiled.open("t1", "").doAll();
    expect(unanswered(oiled)).toEqual([expect.stringContaining("Wash the oil out")]);
    oiled.write("step-answered", { turnaround: "t1", step: "wash-oil", answer: "seen" });
    expect(unanswered(oiled)).toEqual([]);
    expect(kitOf(oiled.seal()).met).toBeUndefined();
    const salted = away();
    salted.write("returned", { exposure: ["salt"] });
    expect(unanswered(salted.open("t1", "").doAll())).toEqual([]);
    expect(recordOf(kitOf(salted).turnaround, PATTERN).map(({ step }) => step)).not.toContain("wash-oil");
    expect(recordOf(kitOf(oiled).turnarounds[0], PATTERN).map(({ step }) => step)).toContain("wash-oil");
  });

  it("still asks for them after a turnaround closed as grounded, and counts their minutes to restore it", () => {
    const hand = away();
    hand.write("returned", { exposure: ["oil"] });
    const { minutes } = standingOf(kitOf(hand), PATTERN, "2026-01-10", {}).restore;
    hand.open("t1", "").write("closed-grounded", { turnaround: "t1", reason: "Dark." });
    expect(kitOf(hand.open("t2", "")).turnaround?.met).toEqual(["oil"]);
    const dry = away();
    dry.write("returned", { exposure: [] });
    expect(minutes).toBe(standingOf(kitOf(dry), PATTERN, "2026-01-10", {}).restore.minutes + 2);
  });

  it("says what it met where it says that it is not turned round", () => {
    const hand = away();
    hand.write("returned", { exposure: ["oil", "salt"] });
    const { because } = standingInWords(standingOf(kitOf(hand), PATTERN, "2026-01-10", {}), ENGLISH.standing);
    expect(because.map(({ text }) => text)).toContain("Returned, and not yet turned round. It met oil and salt water.");
  });

  it("keeps a line that could not be washed as a limit after sealing", () => {
    const hand = away();
    hand.write("returned", { exposure: ["oil"] });
    hand.open("t1", "").doAll();
    hand.write("step-answered", { turnaround: "t1", step: "wash-oil", answer: "not-possible", why: "No water." });
    const { limits } = standingInWords(standingOf(kitOf(hand.seal()), PATTERN, "2026-01-10", {}), ENGLISH.standing);
    expect(limits).toEqual([expect.stringContaining("Wash the oil out")]);
  });
});

describe("what is counted at the return", () => {
  const FOUND = { finding: "f", item: "pump", mode: "pump-seized", effect: "grounds" as const };

  function counted(): Hand {
    const hand = away();
    hand.write("returned", { exposure: [], counted: [{ item: "pump", as: "missing" }], findings: [FOUND] });
    return hand;
  }

  it("is a finding with its mode's effect from then on, and struck with the return", () => {
    const hand = counted();
    expect(kitOf(hand).findings).toMatchObject([{ id: "f", item: "pump", effect: "grounds", photos: [] }]);
    hand.write("struck", { entry: hand.entries.at(-1)!.id, reason: "Another kit." });
    expect(kitOf(hand)).toMatchObject({ findings: [], custody: { kind: "away" } });
  });

  it("takes up a remedy that sorted before the return by a wrong clock", () => {
    const hand = counted();
    const early = new Hand("phone", 0, "2026-01-09");
    early.write("remedy-made", { finding: "f", how: "mended", note: "Freed." });
    const kit = kitFrom([...hand.entries, ...early.entries]);
    expect(kit.findings[0]?.remedies).toHaveLength(1);
  });
});

describe("what was lent with a kit", () => {
  const LENT = [
    { name: "fuel can", count: 2 },
    { name: "long hose", count: 1 },
  ];

  /** Handed over with {@link LENT} and taken back at 08:02. */
  function back(lent?: readonly Lent[]): Hand {
    const hand = new Hand().enrol();
    hand.write("handed-over", { to: "the vessel", method: "line", sealBroken: true, lent: LENT });
    hand.write("returned", { exposure: [], ...(lent && { lent }) });
    return hand;
  }

  it("READY-37 is counted against what went, and is out until it came back or is given up", () => {
    expect(kitOf(back(LENT)).lentOut).toBeUndefined();
    const hand = back([
      { name: "fuel can", count: 1 },
      { name: "long hose", count: 1 },
    ]);
    const out = { name: "fuel can", count: 1, to: "the vessel", isCounted: true };
    expect(kitOf(hand).lentOut).toMatchObject([out]);
    const returned = hand.entries.at(-1)!.id;
    hand.write("lent-settled", { returned, name: "another thing", how: "came-back" });
    expect(kitOf(hand).lentOut).toMatchObject([out]);
    hand.write("lent-settled", { returned, name: "fuel can", how: "came-back" });
    expect(kitOf(hand).lentOut).toBeUndefined();
  });

  it("is settled in part: two of three back, the third given up, and whoever fetches it keeps the work till then", () => {
    const hand = new Hand().enrol();
    const lent = [{ name: "fuel can", count: 3 }];
    hand.write("handed-over", { to: "the vessel", method: "line", sealBroken: true, lent });
    const returned = hand.write("returned", { exposure: [] }).id;
    hand.write("work-taken", { work: "return", person: "ann" });
    hand.write("lent-settled", { returned, name: "fuel can", how: "came-back", count: 2 });
    expect(kitOf(hand).lentOut).toMatchObject([{ name: "fuel can", count: 1 }]);
    expect(kitOf(hand).work?.return?.takers).toMatchObject([{ person: "ann" }]);
    hand.write("lent-settled", { returned, name: "fuel can", how: "given-up", count: 1 });
    expect(kitOf(hand).lentOut).toBeUndefined();
    expect(kitOf(hand).work?.return).toBeUndefined();
  });

  it("is out by what both say, where two devices settle parts of it without sight of each other, in any order", () => {
    const parts = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }));
    fc.assert(
      fc.property(parts, fc.infiniteStream(fc.nat()), ([one, other], keys) => {
        const tablet = new Hand().enrol();
        const lent = [{ name: "fuel can", count: 5 }];
        tablet.write("handed-over", { to: "the vessel", method: "line", sealBroken: true, lent });
        const returned = tablet.write("returned", { exposure: [] }).id;
        const phone = tablet.fork("phone");
        tablet.write("lent-settled", { returned, name: "fuel can", how: "came-back", count: one });
        phone.write("lent-settled", { returned, name: "fuel can", how: "given-up", count: other });
        const all = [...tablet.entries, ...phone.entries];
        const left = kitFrom(shuffled(all, keys)).lentOut?.[0]?.count ?? 0;
        expect(left).toBe(Math.max(0, 5 - one - other));
      }),
    );
  });

  it("is out, and said not to be counted, where nobody counted it", () => {
    expect(kitOf(back()).lentOut).toMatchObject([
      { name: "fuel can", count: 2, isCounted: false },
      { name: "long hose", count: 1, isCounted: false },
    ]);
  });

  it("leaves the standing as it is, and is work due until it is settled", () => {
    const hand = back([{ name: "fuel can", count: 1 }, LENT[1]!]);
    const kit = kitOf(hand.open("t1", "").doAll().seal());
    const outlook = outlookOf(kit, PATTERN, {});
    const standing = standingOf(kit, PATTERN, "2026-01-10", {});
    expect(standing.standing).toBe("ready");
    expect(standing.because.map(({ rule }) => rule)).toEqual(["sound"]);
    const lines = workLinesOf(kit, PATTERN, outlook, "2026-01-10").filter(({ work }) => work === "return");
    const why = lines.flatMap(({ tasks }) => tasks.map((task) => inWords(task.why, ENGLISH.standing)));
    expect(why).toEqual(["Lent to the vessel, not back: fuel can (1)."]);
  });
});
