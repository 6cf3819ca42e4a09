import { describe, expect, it } from "vitest";
import { KEPT_MS, keptText, readCall } from "./before-launch-kept.ts";

const NOW = 1_000_000;
const CALL = {
  kind: "motor boat",
  length: 9,
  tellings: [{ at: 900_000, water: 0.4 }],
  boat: "b1",
  launch: 900,
  light: "dark",
  herMains: false,
  position: "57 12 N",
} as const;

describe("what was told before launching", () => {
  it("is there again after a reload", () => {
    expect(readCall(keptText(CALL, NOW), NOW + KEPT_MS)).toEqual(CALL);
  });

  it("is not taken for that of the next boat, hours later", () => {
    expect(readCall(keptText(CALL, NOW), NOW + KEPT_MS + 1)).toEqual({});
  });

  it.each([null, "", "no text of ours", "[]", "null", '{"at":1000000}', '{"at":1000000,"call":null}'])(
    "begins empty from %s",
    (text) => expect(readCall(text, NOW)).toEqual({}),
  );

  it("leaves out what cannot have been told", () => {
    const text =
      '{"at":1000000,"call":{"kind":"airship","length":"9","distance":1852,"hole":null,"other":1,"tellings":[{"at":1},5],"light":"dim"}}';
    expect(readCall(text, NOW)).toEqual({ distance: 1852 });
  });
});
