import { recallNote, type Bodies } from "#readiness";
import { describe, expect, it } from "vitest";
import { raiseFinding } from "../acts/finding-acts.ts";
import { enrolKit } from "../acts/kit-acts.ts";
import { Desk } from "../sample-station.ts";
import { recallLot, setPart } from "../stock/stock-acts.ts";
import { leftOutOf, paretoOf } from "./index.ts";

describe("where findings fall", () => {
  it("leaves out what nobody found: what was taken for another kit and what a recall raised, and says how many", () => {
    const desk = new Desk();
    const kit = { name: "Kit 1", serial: "S-1", seal: "1", items: [] };
    desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body: kit }));
    const seized = { finding: "f1", item: "pump", mode: "seized", effect: "grounds" as const, photos: [] };
    desk.do(raiseFinding(desk.as("ann"), desk.kit("k1"), seized));
    const part = {
      name: "Cell",
      number: "100",
      unit: "piece",
      items: [{ pattern: "small", item: "cells" }],
      keep: [],
      printed: false,
    };
    desk.do(setPart(desk.as("ann"), "cell", part as unknown as Bodies["part-set"]));
    const recall = { lot: "L1", reason: "They leak.", effect: "grounds" as const };
    desk.do(recallLot(desk.as("ann"), "cell", recall));
    const note = recallNote({ name: "Cell" }, recall);
    const raised = { finding: "f2", item: "cells", mode: "other", effect: "grounds" as const, photos: [], note };
    desk.do(raiseFinding(desk.as("ann"), desk.kit("k1"), raised));
    const robbed = {
      finding: "f3",
      item: "cells",
      mode: "other",
      effect: "grounds" as const,
      note: "Taken.",
      quantity: 1,
    };
    desk.do({
      kind: "entry",
      draft: { subject: "kit:k1", kind: "item-robbed", place: "north", body: { ...robbed, to: "k2" } },
    });
    const span = { from: "2026-01-10", to: "2026-01-10" };
    expect(paretoOf(desk.fold.read(), "item", span).map(({ label, count }) => [label, count])).toEqual([["Pump", 1]]);
    expect(leftOutOf(desk.fold.read(), span)).toEqual({ robbed: 1, recalled: 1, drill: 0 });
  });
});
