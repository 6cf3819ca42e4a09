import { expect, it } from "vitest";
import { inOrder } from "./in-order.ts";

it("puts forecasts in order of time, whatever is computed first and in whatever zone it was written", () => {
  const starts = [{ at: "2026-11-29T10:20:00+00:00" }, { at: "2026-11-29T12:00:00+01:00" }];
  const levels = [{ at: "2026-11-29T10:40:00+00:00" }, { at: "2026-11-29T10:05:00+00:00" }];
  expect(inOrder([...starts, ...levels])).toEqual([levels[1], starts[0], levels[0], starts[1]]);
});
