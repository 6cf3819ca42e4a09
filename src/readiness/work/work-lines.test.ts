import { ENGLISH, inWords } from "#words";
import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { outlookOf } from "../standing/standing.ts";
import type { KitState } from "../state.ts";
import { sayWhy } from "./work-line.ts";
import { partsOfOpening, workLinesOf } from "./work-lines.ts";

/** Enrolled, turned round and sealed on Saturday 10 January 2026: fuel good until 10 July, muster until 24 February. */
function sealed(): Hand {
  return new Hand().enrol().open().doAll().seal();
}

function linesOn(kit: KitState, today: string) {
  return workLinesOf(kit, SAMPLE_PATTERN, outlookOf(kit, SAMPLE_PATTERN, {}), today);
}

function whyOn(today: string): readonly string[] {
  return linesOn(kitOf(sealed()), today)[0]!.tasks.map((task) => sayWhy(task, ENGLISH.standing));
}

describe("work due on a kit", () => {
  it("is none while nothing ends within a month", () => {
    expect(linesOn(kitOf(sealed()), "2026-01-12")).toEqual([]);
  });

  it("names a muster this month, this week and overdue, by its latest day", () => {
    const kit = kitOf(sealed());
    expect(linesOn(kit, "2026-02-02")).toMatchObject([
      { work: "muster", bucket: "month", by: "2026-02-24", people: 1 },
    ]);
    expect(linesOn(kit, "2026-02-23")).toMatchObject([{ work: "muster", bucket: "week", latest: "2026-02-24" }]);
    const [late] = linesOn(kit, "2026-02-25");
    expect(late).toMatchObject({ bucket: "overdue", isGrounding: false });
    expect(late).not.toHaveProperty("by");
  });

  it("is one line for all that one opening settles, with minutes and parts of the pattern", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    const [line, ...rest] = linesOn(kitOf(hand), "2026-07-01");
    expect(rest).toEqual([]);
    expect(line).toMatchObject({ work: "opening", bucket: "overdue", groundsAfter: "2026-07-10" });
    expect(line!.tasks.map(({ sort }) => sort).toSorted()).toEqual(["mend", "muster", "renew"]);
    expect(line!.parts.map(({ item }) => item)).toEqual(["fuel", "desiccant"]);
    // Open, look at the torch, stow, refuel and close at two minutes each.
    expect(line!.minutes).toBe(10);
  });

  it("names the same parts for work due and for what to have at hand before the opening", () => {
    const kit = kitOf(sealed());
    const atHand = (today: string) =>
      partsOfOpening(kit, SAMPLE_PATTERN, outlookOf(kit, SAMPLE_PATTERN, {}), today).map(({ item }) => item);
    const due = linesOn(kit, "2026-07-01").find(({ work }) => work === "opening")!;
    expect(atHand("2026-07-01")).toEqual(due.parts.map(({ item }) => item));
    expect(atHand("2026-01-12")).toEqual(["desiccant"]);
  });

  it("says of a finding that something was done about only its proof, with the line", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    hand.write("remedy-made", { finding: "f", how: "mended", note: "New cells." });
    const [proof] = linesOn(kitOf(hand), "2026-02-02")[0]!.tasks;
    expect(proof).toMatchObject({ sort: "prove", finding: "f", proveAt: [3] });
    expect(inWords(proof!.what, ENGLISH.standing)).toBe("Torch: dim: prove it at line 3.");
  });

  it("never hides a muster behind an opening that was put off past its last day", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    hand.write("work-put-off", { work: "opening", until: "2026-03-30", reason: "Part on order." });
    const kit = kitOf(hand);
    const told = (today: string) => linesOn(kit, today).map(({ work, bucket }) => `${work} ${bucket}`);
    expect(told("2026-02-23")).toEqual(["opening month", "muster week"]);
    expect(told("2026-02-25")).toEqual(["opening month", "muster overdue"]);
    expect(told("2026-03-31")).toEqual(["opening overdue"]);
  });

  it("keeps a muster due on its last day, whatever day an earlier version let it be put off to", () => {
    const hand = sealed();
    hand.write("work-put-off", { work: "muster", until: "2026-03-31", reason: "Nobody is there." });
    expect(linesOn(kitOf(hand), "2026-02-02")).toMatchObject([{ work: "muster", by: "2026-02-24" }]);
    expect(linesOn(kitOf(hand), "2026-02-25")).toMatchObject([{ work: "muster", bucket: "overdue" }]);
  });

  it("keeps a muster that cannot wait for the opening as a line of its own", () => {
    const hand = sealed();
    hand.write("mustered", { sealSeen: "00500", containerSound: true }, "2026-05-20");
    expect(linesOn(kitOf(hand), "2026-06-29").map(({ work, by }) => [work, by])).toEqual([
      ["opening", "2026-07-10"],
      ["muster", "2026-07-04"],
    ]);
  });

  it("ends with the muster: one that is due only weeks later is not named at an opening that is overdue", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    expect(linesOn(kitOf(hand), "2026-02-23")[0]!.tasks.map(({ sort }) => sort)).toEqual(["mend", "muster"]);
    hand.write("mustered", { sealSeen: "00500", containerSound: true }, "2026-02-23");
    const lines = linesOn(kitOf(hand), "2026-03-20");
    expect(lines.map(({ work }) => work)).toEqual(["opening"]);
    expect(lines[0]!.tasks.map(({ sort }) => sort)).toEqual(["mend"]);
    expect(linesOn(kitOf(hand), "2026-04-06")[0]!.tasks.map(({ sort }) => sort)).toEqual(["mend", "muster"]);
  });

  it("says in a sentence what ends on the last day of what is still good, and since when what is not", () => {
    expect(whyOn("2026-02-02")).toEqual(["Muster due."]);
    expect(whyOn("2026-02-25")).toEqual(["Muster older than 45 days: the last was on 10 January 2026."]);
  });

  it("asks of an open kit to finish the turnaround that is open, and not to do one beside it", () => {
    const hand = sealed();
    hand.write("handed-over", { to: "a boat", method: "line", sealBroken: true });
    hand.write("returned", { exposure: [] });
    hand.open("t2", "");
    const lines = linesOn(kitOf(hand), "2026-01-10");
    expect(lines.map(({ work }) => work)).toEqual(["opening"]);
    expect(lines[0]!.tasks.filter(({ sort }) => sort === "turnaround" || sort === "finish")).toMatchObject([
      { sort: "finish", what: { say: "finish" } },
    ]);
  });

  it("puts a kit back from salt water on top with the time left, until it is flushed", () => {
    const hand = sealed();
    hand.write("handed-over", { to: "a boat", method: "line", sealBroken: true });
    expect(linesOn(kitOf(hand), "2026-01-10")).toMatchObject([{ work: "return", bucket: "overdue" }]);
    const back = hand.write("returned", { exposure: ["salt"] });
    expect(linesOn(kitOf(hand), "2026-01-10")).toMatchObject([
      { work: "opening", bucket: "wet", flush: { by: Date.parse(back.at) + 2 * 3_600_000 } },
    ]);
    hand.write("flushed", {});
    expect(linesOn(kitOf(hand), "2026-01-10")).toMatchObject([{ work: "opening", bucket: "overdue" }]);
  });

  it("says that a thing goes out of date while its last good day is still to come", () => {
    const why = { say: "outOfDate", of: { item: "Petrol in the tank" } } as const;
    expect(sayWhy({ why, day: "2026-12-10" }, ENGLISH.standing)).toBe("Petrol in the tank goes out of date.");
    expect(sayWhy({ why }, ENGLISH.standing)).toBe("Petrol in the tank out of date");
  });

  it("fetches a kit by the day on which it is expected, and asks for it from the day after", () => {
    const hand = sealed();
    hand.write("handed-over", { to: "a boat", method: "line", sealBroken: true, back: "2026-01-15" });
    const on = (day: string) => linesOn(kitOf(hand), day);
    expect(on("2026-01-10")).toMatchObject([{ work: "return", bucket: "month", by: "2026-01-15" }]);
    expect(on("2026-01-15")).toMatchObject([{ work: "return", bucket: "week" }]);
    expect(on("2026-01-16")).toMatchObject([{ work: "return", bucket: "overdue", by: "2026-01-15" }]);
    expect(sayWhy(on("2026-01-16")[0]!.tasks[0]!, ENGLISH.standing)).toBe(
      "Handed over to a boat, expected back by 15 January 2026.",
    );
  });

  it("names a planned opening in its week, whatever else is due", () => {
    const hand = sealed();
    const openings = [{ id: "o1", week: "2026-02-02", renews: ["fuel"], by: ["ann"] }];
    hand.write("openings-planned", { openings });
    expect(linesOn(kitOf(hand), "2026-02-03")).toMatchObject([
      { work: "opening", bucket: "week", planned: "2026-02-02", by: "2026-02-08" },
    ]);
    hand.open("t2", "00500").doAll("t2").seal("00501", "t2");
    expect(kitOf(hand).planned?.openings).toHaveLength(1);
    const later = new Hand("tablet", 200, "2026-01-28");
    later.entries.push(...hand.entries);
    later.open("t3", "00501").doAll("t3").seal("00502", "t3");
    expect(kitOf(later).planned).toBeUndefined();
  });

  it("waits as long as it was put off with a reason, and is never put off past the day that grounds", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    hand.write("work-put-off", { work: "opening", until: "2026-06-20", reason: "The lamp is on order." });
    expect(linesOn(kitOf(hand), "2026-06-12")[0]).toMatchObject({ bucket: "month", by: "2026-06-20" });
    expect(linesOn(kitOf(hand), "2026-06-21")[0]).toMatchObject({ bucket: "overdue" });
    hand.write("work-put-off", { work: "opening", until: "2026-08-20", reason: "Still on order." });
    expect(linesOn(kitOf(hand), "2026-06-21")[0]).toMatchObject({ by: "2026-07-10", groundsAfter: "2026-07-10" });
    expect(linesOn(kitOf(hand), "2026-07-11")[0]).toMatchObject({ bucket: "overdue", isGrounding: true });
  });

  it("forgets who took it once it is sealed, and a muster's taker once it is mustered", () => {
    const hand = sealed();
    hand.write("work-taken", { work: "muster", person: "ann" });
    hand.write("work-taken", { work: "opening", person: "ben" });
    hand.write("mustered", { sealSeen: "00500", containerSound: true });
    expect(Object.keys(kitOf(hand).work ?? {})).toEqual(["opening"]);
    hand.open("t2", "00500").doAll("t2").seal("00501", "t2");
    expect(kitOf(hand).work).toBeUndefined();
  });

  it("reads old logs to the same kit", () => {
    const kit = kitOf(sealed());
    expect(kit).not.toHaveProperty("work");
    expect(kit).not.toHaveProperty("planned");
  });
});
