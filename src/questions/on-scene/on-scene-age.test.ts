import { describe, expect, it } from "vitest";
import { asLastSounded, changedUnsounded } from "./on-scene-age.ts";
import type { OnSceneInput } from "./on-scene-fields.ts";

const ASKED: OnSceneInput = {
  boat: { kind: "motor boat", length: 10 },
  spaces: [
    { name: "cabin", sort: "cabin", part: "middle" },
    {
      name: "hold",
      sort: "hold",
      part: "forward",
      level: 0.4,
      readings: [
        { at: 0, level: 0.1 },
        { at: 900, level: 0.4 },
      ],
    },
  ],
  readings: [
    { at: 0, level: 0.5 },
    { at: 300, level: 0.6 },
  ],
  pumping: [
    { from: 60, to: 600, flow: 0.003 },
    { from: 400, flow: 0.003 },
  ],
  patches: [
    { at: 200, open: 0.5 },
    { at: 500, open: 0.05 },
  ],
  now: 1200,
};

describe("as she was when last sounded", () => {
  it("knows of nothing written of a later instant", () => {
    expect(asLastSounded(ASKED)).toMatchObject({
      now: 300,
      patches: [{ at: 200, open: 0.5 }],
      pumping: [{ from: 60, flow: 0.003 }],
    });
    expect(asLastSounded(ASKED).pumping[0]).not.toHaveProperty("to");
  });

  it("has a further space as it was last sounded by then", () => {
    expect(asLastSounded(ASKED).spaces[1]).toMatchObject({ level: 0.1, readings: [{ at: 0, level: 0.1 }] });
    const later = { ...ASKED.spaces[1]!, readings: [{ at: 900, level: 0.4 }] };
    expect(asLastSounded({ ...ASKED, spaces: [ASKED.spaces[0]!, later] }).spaces[1]!.level).toBeUndefined();
    const told = { ...ASKED.spaces[1]!, readings: undefined };
    expect(asLastSounded({ ...ASKED, spaces: [ASKED.spaces[0]!, told] }).spaces[1]!.level).toBe(0.4);
  });

  it("is as now where nothing was sounded", () => {
    expect(asLastSounded({ ...ASKED, readings: [] }).now).toBe(1200);
  });
});

describe("a change that nobody has sounded since", () => {
  it("is the last start, stop or patch after the last sounding, by now", () => {
    expect(changedUnsounded(ASKED)).toBe(600);
    expect(changedUnsounded({ ...ASKED, now: 450 })).toBe(400);
  });

  it("is none where the last sounding is newer, or nothing was changed", () => {
    expect(changedUnsounded({ ...ASKED, readings: [...ASKED.readings, { at: 700, level: 0.6 }] })).toBeUndefined();
    expect(changedUnsounded({ ...ASKED, pumping: [], patches: undefined })).toBeUndefined();
  });
});
