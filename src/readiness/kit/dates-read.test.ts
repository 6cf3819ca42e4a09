import { describe, expect, it } from "vitest";
import { stepForDate, type Check, type Pattern } from "#kit";
import { ENGLISH } from "#words";
import { dateWantedBy } from "./date-wanted.ts";
import { datesOf, datesUnknown, lastGoodDay } from "./life.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "./sample-kit.ts";
import { sealingRefusals } from "./sealing.ts";
import { standingOf } from "../standing/standing.ts";
import { sayRefusal } from "./refusal.ts";
import { standingInWords } from "../standing/in-words.ts";

const LOOK: Check = { id: "lid", kind: "look", item: "gasket", ask: "Press it.", expect: "Springs back.", finds: [] };
/** The sample pattern with its lid gasket in the hand at the line that opens the lid. */
const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  items: SAMPLE_PATTERN.items.map((item) =>
    item.id === "gasket" ? { ...item, unread: "limits", unreadLimit: "Not in heavy seas." } : item,
  ),
  checks: [...SAMPLE_PATTERN.checks, LOOK],
  stages: SAMPLE_PATTERN.stages.map((stage) =>
    stage.id === "open" ? { ...stage, steps: stage.steps.map((step) => ({ ...step, checks: ["lid"] })) } : stage,
  ),
};
const gasket = PATTERN.items.find(({ id }) => id === "gasket")!;

/** A kit taken on charge with nothing read but its seal. */
function newKit(): Hand {
  const hand = new Hand();
  hand.write("kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "00417", items: [] });
  return hand;
}

/** The same after a whole first turnaround, but for the date of its gasket. */
function turnedRound(): Hand {
  const hand = newKit().open();
  hand.write("step-answered", { turnaround: "t1", step: "open", check: "lid", answer: "seen" });
  return hand.doAll();
}

function refusals(hand: Hand): readonly string[] {
  const kit = kitOf(hand);
  return sealingRefusals({ kit, turnaround: kit.turnaround!, pattern: PATTERN, allKits: [kit] }).map((one) =>
    sayRefusal(one, ENGLISH.held),
  );
}

const standing = (hand: Hand, today = "2026-01-10") =>
  standingInWords(standingOf(kitOf(hand), PATTERN, today, {}), ENGLISH.standing);

describe("a kit taken on charge with no date read", () => {
  it("is new, and says that its first turnaround is to do", () => {
    const { standing: word, because } = standing(newKit());
    expect([word, because[0]?.text]).toEqual(["grounded", "New, first turnaround to do."]);
    expect(because.map(({ text }) => text)).not.toContain("No turnaround on record.");
  });

  it("is not sealed before the date of what was in the hand is read, and names the line", () => {
    const kit = kitOf(turnedRound());
    const held = sealingRefusals({ kit, turnaround: kit.turnaround!, pattern: PATTERN, allKits: [kit] });
    expect(held).toMatchObject([{ rule: "date", item: "gasket", step: "open" }]);
  });

  it("stands ready after its first turnaround, once the date was read at the line", () => {
    const hand = turnedRound();
    hand.write("date-read", { turnaround: "t1", step: "open", item: "gasket", of: "fitted", date: "2025-06" });
    expect(refusals(hand)).toEqual([]);
    expect(standing(hand.seal()).standing).toBe("ready");
    expect(datesOf(kitOf(hand), gasket, PATTERN)).toEqual({ fitted: "2025-06-01" });
  });

  it("is limited as the pattern says where the date cannot be read", () => {
    const hand = turnedRound();
    hand.write("date-read", { turnaround: "t1", step: "open", item: "gasket", of: "fitted" });
    expect(refusals(hand)).toEqual([]);
    const { standing: word, limits, because } = standing(hand.seal());
    expect([word, limits]).toEqual(["ready-with-limits", ["Not in heavy seas."]]);
    expect(because[0]?.text).toBe("The date of Lid gasket cannot be read.");
  });

  it("stands ready again once a new one is fitted in place of one that cannot be read", () => {
    const hand = turnedRound();
    hand.write("date-read", { item: "gasket", of: "fitted" });
    hand.write("item-fitted", { item: "gasket", fitted: "2026-01-10", quantity: 1, turnaround: "t1", step: "open" });
    expect(kitOf(hand).dates?.gasket).toBeUndefined();
    expect(standing(hand.seal()).standing).toBe("ready");
  });
});

describe("a date read off an item", () => {
  it("counts the life of rubber from its making where that is known and earlier (FED-STD-793: from cure)", () => {
    const dates = { fitted: "2025-06-01", made: "2024-02-01" };
    expect(lastGoodDay(gasket, dates)).toBe("2026-02-01");
    expect(lastGoodDay(gasket, { fitted: "2025-06-01" })).toBe("2027-06-01");
  });

  it("is kept from the enrolment, and a fitting since puts it aside", () => {
    const hand = new Hand();
    const read = [{ item: "gasket", of: "made", date: "2024-02" } as const];
    hand.write("kit-enrolled", { name: "Kit 1", serial: "S-1", items: [], read });
    expect(datesUnknown(kitOf(hand), PATTERN).map(({ id }) => id)).toEqual(["cells", "fuel"]);
    expect(datesOf(kitOf(hand), gasket, PATTERN)).toEqual({ made: "2024-02-01" });
    hand.write("item-fitted", { item: "gasket", fitted: "2026-01-10", quantity: 1 });
    expect(datesOf(kitOf(hand), gasket, PATTERN)).toEqual({ fitted: "2026-01-10" });
  });

  it("differs where two devices read it apart, and the one that stands says its piece last", () => {
    const tablet = newKit();
    const phone = tablet.fork("phone");
    const one = tablet.write("date-read", { item: "gasket", of: "made", date: "2024-02" });
    const other = phone.write("date-read", { item: "gasket", of: "made", date: "2023-02" });
    expect(kitOf(tablet, phone).toSettle).toMatchObject([{ what: "contents", item: "gasket" }]);
    phone.write("settled", { entries: [one.id, other.id], stands: one.id, reason: "Read again." });
    expect(kitOf(tablet, phone).dates?.gasket?.made).toBe("2024-02");
    expect(kitOf(tablet, phone).toSettle).toEqual([]);
  });
});

const stepOf = (id: string) =>
  stepForDate(
    PATTERN,
    PATTERN.items.find((item) => item.id === id)!,
  )?.id;

describe("where a date is read", () => {
  it("is the first line at which the thing is in the hand, and none where a check or a new one sees to it", () => {
    expect([stepOf("gasket"), stepOf("cells"), stepOf("fuel"), stepOf("pump")]).toEqual([
      "open",
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("must lie beyond the next turnaround where the check says so, by the stricter of pattern and station", () => {
    const check = PATTERN.checks.find(({ id }) => id === "cell-date")!;
    const beyond = { ...check, kind: "date", beyond: "next-turnaround" } as Check;
    expect(dateWantedBy(check, PATTERN, {}, "2026-01-10")).toBe("2026-01-10");
    expect(dateWantedBy(beyond, PATTERN, {}, "2026-01-10")).toBe("2027-07-10");
    expect(dateWantedBy(beyond, PATTERN, { turnaround: { months: 12 } }, "2026-01-10")).toBe("2027-01-10");
  });
});
