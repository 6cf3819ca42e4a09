import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayPicture } from "./picture-words.ts";

const words = await fetchWords("en", "turnaroundFit");
const drawing = { title: "Two drain plugs", shapes: [] };

describe("a drawing read aloud", () => {
  it("says what is to be seen, and what is lit", () => {
    expect(sayPicture({ drawing, names: ["Plug of the casing", "Washer"] }, words)).toBe(
      "Two drain plugs. Lit: Plug of the casing, Washer.",
    );
  });

  it("names nothing lit where nothing is", () => {
    expect(sayPicture({ drawing, names: [] }, words)).toBe("Two drain plugs.");
  });
});
