import type { Entry } from "#log";
import { expect, test } from "vitest";
import { SMALL_PATTERN } from "../sample-station.ts";
import { createStationFold } from "../station-fold.ts";
import { idOf, lines, type Line } from "./crafted-line.ts";

function kitOf(entries: readonly Entry[]) {
  const fold = createStationFold([SMALL_PATTERN]);
  fold.add(entries);
  return fold.kit("k")!;
}

/** Each on a device of its own, and without sight of any other. */
function blind(count: number, line: (number: number) => Line): readonly Entry[] {
  return lines("kit:k", count, (number) => ({ device: `d${number}`, ...line(number) }));
}

const drawn = { part: "cell", place: "north" };
const fitted = { item: "cells", fitted: "2027-01-01", quantity: 1, turnaround: "t", drawn };

test("of 40 who took one work without sight of each other the last 32 stand", () => {
  const kit = kitOf(blind(40, (number) => ({ kind: "work-taken", body: { work: "muster", person: `p${number}` } })));
  const people = kit.work?.muster?.takers.map(({ person }) => person);
  expect(people).toEqual(Array.from({ length: 32 }, (_, one) => `p${one + 8}`));
});

test.each([
  [8, 8],
  [9, 10],
])("a part fitted on %i devices, then again in sight of the first: %i were taken", (count, taken) => {
  const all = blind(count + 1, (number) => ({
    kind: "item-fitted",
    body: fitted,
    ...(number === count && { device: "d0", after: [idOf(0)] }),
  }));
  expect(kitOf(all).drawn).toHaveLength(taken);
});
