import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import type { PlantedFault } from "../kinds/drill-parts.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import { Hand, kitFrom, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { sealingRefusals } from "../kit/sealing.ts";
import { demandsOf, hiddenOf } from "../demands/index.ts";
import { trendsOf } from "../trends/trends.ts";
import { standingOf } from "../standing/standing.ts";
import { commitmentOf, compareDrill, isOfDrill, readNonce, trialsOf } from "./index.ts";
import { sayRefusal } from "../kit/refusal.ts";
import { standingInWords } from "../standing/in-words.ts";

const NONCE = "0123456789ABCDEFGHJK";
const SEIZED: PlantedFault = { item: "pump", mode: "pump-seized", how: "A wedge in the impeller." };
const DIM: PlantedFault = { item: "torch", mode: "torch-dim", how: "Flat cells put in." };
const AT = { drill: "d1", plant: "p1" } as const;
const REVEAL = { ...AT, nonce: NONCE, faults: [SEIZED, DIM] };

const commitment = (faults: readonly PlantedFault[] = REVEAL.faults) =>
  commitmentOf({ kit: "k1", ...AT, nonce: NONCE, faults });

/** Turned round once in order, then set aside with two faults planted. */
function planted(): Hand {
  const hand = new Hand().enrol().open("t0").doAll("t0").seal("00500", "t0");
  hand.write("drill-begun", { drill: "d1", sealSeen: "00500", trainees: ["ben"] });
  hand.write("faults-planted", { ...AT, commitment: commitment() });
  return hand;
}

/** The trainee does every line, finds the pump, misses the torch, and calls the paint scratched. */
function looked(hand = planted()): Hand {
  hand.write("turnaround-opened", { turnaround: "t1", because: "routine", sealSeen: "", drill: "d1" });
  hand.doAll("t1");
  const at = { turnaround: "t1", step: "look-pump" };
  hand.write("step-answered", { ...at, check: "turns", answer: "wrong" });
  raise(hand, "f1", "turns", "pump-seized");
  hand.write("step-answered", { ...at, check: "paint", answer: "wrong" });
  raise(hand, "f2", "paint", "pump-scratched");
  return hand;
}

function raise(hand: Hand, finding: string, check: string, mode: string): void {
  const effect = mode === "pump-seized" ? "grounds" : "notes";
  const at = { turnaround: "t1", step: "look-pump", check };
  hand.write("finding-raised", { ...at, finding, item: "pump", mode, effect, photos: [] });
}

const drillOf = (hand: Hand) => kitOf(hand).drills![0]!;
const compared = (hand: Hand) => compareDrill(kitOf(hand), drillOf(hand), SAMPLE_PATTERN);
const standing = (hand: Hand) =>
  standingInWords(standingOf(kitOf(hand), SAMPLE_PATTERN, "2026-01-11", {}), ENGLISH.standing);

function refused(hand: Hand): readonly string[] {
  const kit = kitOf(hand);
  return sealingRefusals({ kit, turnaround: kit.turnaround!, pattern: SAMPLE_PATTERN, allKits: [kit], seal: "00600" })
    .filter(({ rule }) => rule === "drill")
    .map((one) => sayRefusal(one, ENGLISH.held));
}

/** Kinds of line about a drill. */
type DrillKind = Extract<keyof KitBodies, `drill-${string}` | "faults-planted" | "planted-removed">;

function write<Kind extends DrillKind>(hand: Hand, kind: Kind, body: Omit<KitBodies[Kind], "drill">): Hand {
  hand.write(kind, { drill: "d1", ...body } as never);
  return hand;
}

const removed = (hand: Hand, fault: number) => write(hand, "planted-removed", { plant: "p1", fault });

/** Revealed, both taken out, the paint judged, the lines looked at again, the drill ended. */
function ended(): Hand {
  const hand = write(looked(), "drill-revealed", REVEAL);
  removed(removed(hand, 1), 2);
  write(hand, "drill-finding-judged", { finding: "f2", real: false });
  write(hand, "drill-ended", { how: "compared" });
  for (const [step, check] of [
    ["look-pump", "turns"],
    ["look-torch", "light"],
    ["look-pump", "paint"],
  ] as const) {
    hand.write("step-answered", { turnaround: "t1", step, check, answer: "seen" });
  }
  return hand;
}

describe("a kit in a drill", () => {
  it("READY-19 is grounded as set aside from the drill's beginning on, and stays so until it is sealed after the end", () => {
    const hand = planted();
    expect(standing(hand).standing).toBe("grounded");
    expect(standing(hand).because.map(({ text }) => text)).toContain("Set aside for a drill since 10 January 2026.");
    const after = ended();
    expect(standing(after).because.map(({ text }) => text)).toContain("Opened for a drill, and not sealed since.");
    after.seal("00600", "t1");
    expect(standing(after)).toMatchObject({ standing: "ready", because: [{ rule: "sound" }] });
  });

  it("READY-20 is not sealed before each planted fault is named removed, each other finding judged, and the drill ended", () => {
    const hand = looked();
    expect(refused(hand)).toEqual(["A drill is on: who planted reveals what, or the drill is ended as not compared."]);
    write(hand, "drill-revealed", REVEAL);
    expect(refused(hand).slice(0, 2)).toEqual([
      expect.stringMatching(/^Planted, and not named removed: Pump: seized\./),
      expect.stringMatching(/^Planted, and not named removed: Torch: dim\./),
    ]);
    expect(refused(hand)[2]).toBe("Not planted: say whether it is real: Pump: scratched.");
    removed(hand, 1);
    expect(refused(hand).filter((text) => text.startsWith("Planted"))).toHaveLength(1);
    removed(hand, 2);
    write(hand, "drill-finding-judged", { finding: "f2", real: false });
    expect(refused(hand)[0]).toBe("Every planted fault is named removed: end the drill first.");
    write(hand, "drill-ended", { how: "compared" });
    expect(refused(hand)).toEqual([
      "Look again, a planted fault was taken out since: line 2a, Pump.",
      "Look again, a planted fault was taken out since: line 3a, Torch.",
    ]);
    expect(refused(ended())).toEqual([]);
  });

  it("READY-21 shows nothing of what was planted in what its log says before the reveal", () => {
    const text = JSON.stringify([planted().entries, kitOf(planted())]);
    for (const word of ["pump-seized", "torch-dim", "wedge", "Flat cells", NONCE]) expect(text).not.toContain(word);
  });

  it("READY-21 takes what is revealed only where it gives the hash written before; words may differ in stops and capitals", () => {
    const other = write(looked(), "drill-revealed", { ...REVEAL, faults: [SEIZED] });
    expect(drillOf(other).hidden).toBe(1);
    expect(compared(other).faults).toEqual([]);
    const typed = [
      { ...DIM, how: "flat  cells, put in" },
      { ...SEIZED, how: "a wedge in the IMPELLER" },
    ];
    expect(compared(write(other, "drill-revealed", { ...REVEAL, faults: typed })).faults).toHaveLength(2);
    expect(commitment([{ ...SEIZED, how: "Two wedges" }])).not.toBe(commitment([SEIZED]));
    expect(readNonce(" o123-4567 89ab cdef ghjk")).toBe(NONCE);
  });

  it("READY-22 is compared: found, missed, and what was not planted", () => {
    const { faults, unjudged } = compared(write(looked(), "drill-revealed", REVEAL));
    expect(faults.map(({ mode, found }) => [mode, found?.id])).toEqual([
      ["pump-seized", "f1"],
      ["torch-dim", undefined],
    ]);
    expect(unjudged.map(({ id }) => id)).toEqual(["f2"]);
  });

  it("READY-22 takes a finding under another mode of the item as found where a check of the planted mode raised it", () => {
    const hand = planted();
    hand.write("turnaround-opened", { turnaround: "t1", because: "routine", sealSeen: "", drill: "d1" });
    raise(hand, "f9", "turns", "other");
    write(hand, "drill-revealed", REVEAL);
    expect(compared(hand).faults[0]!.found?.id).toBe("f9");
  });

  it("closes what was planted with its removal and what is not real by that word, and leaves open what is real", () => {
    const hand = write(looked(), "drill-revealed", REVEAL);
    const open = () =>
      kitOf(hand)
        .findings.filter(({ closed }) => !closed)
        .map(({ id }) => id);
    expect(open()).toEqual(["f1", "f2"]);
    removed(hand, 1);
    expect(open()).toEqual(["f2"]);
    write(hand, "drill-finding-judged", { finding: "f2", real: false });
    expect(open()).toEqual([]);
    write(hand, "drill-finding-judged", { finding: "f2", real: true });
    expect(open()).toEqual(["f2"]);
    expect(isOfDrill(kitOf(hand).findings[1]!, kitOf(hand))).toBe(false);
  });

  it("READY-23 asks for a whole new turnaround where the list is lost", () => {
    const hand = looked();
    write(hand, "drill-ended", { how: "not-compared", reason: "The phone went into the water." });
    expect(refused(hand)[0]).toMatch(/^What was planted was not shown/);
    hand.seal("00600", "t1");
    expect(standing(hand).because[0]!.text).toMatch(/nobody showed which/);
    hand.open("t2", "00600").doAll("t2").seal("00601", "t2");
    expect(standing(hand).because.map(({ rule }) => rule)).not.toContain("drill");
    expect(standing(hand).standing).toBe("grounded");
  });
});

describe("a drill in the figures of the fleet", () => {
  it("READY-24 is no demand, no look, no fault found and no point of a trend", () => {
    const before = new Hand().enrol().open("t0").doAll("t0").seal("00500", "t0");
    const [ordinary, drilled] = [kitOf(before), kitOf(ended())];
    expect(drilled.runs).toHaveLength(2);
    expect(demandsOf(drilled, [], undefined)).toEqual(demandsOf(ordinary, [], undefined));
    expect(trendsOf(drilled)).toEqual(trendsOf(ordinary));
    expect(hiddenOf(drilled, SAMPLE_PATTERN)).toEqual({ found: 0, lay: 0, looks: 0 });
  });

  it("READY-24 leaves a look after the drill to count, from the drill's closing on", () => {
    const hand = ended().seal("00600", "t1").open("t2", "00600");
    expect(hiddenOf(kitOf(hand), SAMPLE_PATTERN)).toEqual({ found: 0, lay: 60, looks: 1 });
  });

  it("READY-25 tells for each check whether it found what it can find", () => {
    const trials = trialsOf(kitOf(ended()), drillOf(ended()), SAMPLE_PATTERN);
    expect(trials.map(({ check, found }) => [check, found])).toEqual([
      ["turns", true],
      ["light", false],
    ]);
    expect(trialsOf(kitOf(looked()), drillOf(looked()), SAMPLE_PATTERN)).toEqual([]);
  });
});

describe("a drill that two devices tell of", () => {
  it("is the same whatever the order in which its lines arrive", () => {
    const { entries } = ended();
    const [here, there] = [kitFrom(entries), kitFrom(entries.toReversed())];
    expect(there).toEqual(here);
  });

  it("takes a turnaround that was open without sight of it as part of it", () => {
    const hand = new Hand().enrol();
    const other = hand.fork("phone");
    hand.open("t1");
    other.write("drill-begun", { drill: "d1", sealSeen: "00417", trainees: ["ben"] });
    expect(kitOf(hand, other).turnaround?.drill).toBe("d1");
  });
});
