import { describe, expect, it } from "vitest";
import { sayPicture } from "./picture-words.ts";

const drawing = { title: "Two drain plugs", shapes: [] };

describe("a drawing read aloud", () => {
  it("says what is to be seen, and what is lit", () => {
    expect(sayPicture({ drawing, names: ["Plug of the casing", "Washer"] })).toBe(
      "Two drain plugs. Lit: Plug of the casing, Washer.",
    );
  });

  it("names nothing lit where nothing is", () => {
    expect(sayPicture({ drawing, names: [] })).toBe("Two drain plugs.");
  });
});
