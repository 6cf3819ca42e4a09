import { describe, expect, it } from "vitest";
import { readDraft } from "./use-ask-draft.ts";

describe("what was entered before the answer", () => {
  it("comes back as kept", () => {
    const kept = { typed: { quantity: "55 cm" }, note: "wet", photos: [] };
    expect(readDraft(JSON.stringify(kept))).toEqual(kept);
  });

  it("counts as nothing where it is missing, partial or broken", () => {
    const empty = { typed: {}, note: "", photos: [] };
    expect(readDraft(null)).toEqual(empty);
    expect(readDraft("{broken")).toEqual(empty);
    expect(readDraft('{"note":"wet"}')).toEqual({ ...empty, note: "wet" });
  });
});
