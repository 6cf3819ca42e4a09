import { describe, expect, it } from "vitest";
import { changedSituation } from "./situation.ts";

const STANDS = { position: "57 12 N", drift: "east 2 kn" };

describe("where she is, written down again", () => {
  it("tells what is new and nothing else", () => {
    expect(changedSituation(STANDS, { position: " 57 14 N ", drift: "east 2 kn", tide: "ebb" })).toEqual({
      position: "57 14 N",
      tide: "ebb",
    });
  });

  it("tells nothing where nothing is new, and takes what is emptied for not told", () => {
    expect(changedSituation(STANDS, {})).toBeUndefined();
    expect(changedSituation(STANDS, { position: "57 12 N", drift: "" })).toBeUndefined();
  });
});
