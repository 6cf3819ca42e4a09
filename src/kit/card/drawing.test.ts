import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { readDrawing } from "./drawing.ts";

const NAME = "seal.svg";

function svg(inside: string, viewBox = "0 0 240 180"): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}">\n<title>Cut the seal</title>\n${inside}\n</svg>\n`;
}

function refused(text: string): string {
  try {
    readDrawing(text, NAME);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map(({ code, got }) => `${code} ${got}`).join("\n");
    throw thrown;
  }
  return "taken";
}

describe("a drawing", () => {
  it("is its title and its shapes in order, a circle as the path that it is", () => {
    const text = svg(
      '<path class="body" data-part="seal" d="M1 2L3 4Z"/><circle class="solid" cx="10" cy="20" r="5"/>',
    );
    expect(readDrawing(text, NAME)).toEqual({
      title: "Cut the seal",
      shapes: [
        { d: "M1 2L3 4Z", as: "body", part: "seal" },
        { d: "M5 20a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z", as: "solid" },
      ],
    });
  });

  it("may carry a style for other viewers, which is passed over", () => {
    const text = svg('<style>path{fill:none}</style><!-- the seal --><path class="line" d="M0 0L9 9"/>');
    expect(readDrawing(text, NAME).shapes).toHaveLength(1);
  });

  it.each([
    ["a script", "<script>alert(1)</script>"],
    ["a handler", '<path class="line" onclick="alert(1)" d="M0 0L9 9"/>'],
    ["a link out", '<image href="http://example.org/a.png"/>'],
    ["words", '<text x="1" y="1">PULL</text>'],
    ["an unknown look", '<path class="pretty" d="M0 0L9 9"/>'],
    ["path data that is none", '<path class="line" d="url(#a)"/>'],
    ["a circle without a middle", '<circle class="line" r="5"/>'],
    ["a group", '<g><path class="line" d="M0 0L9 9"/></g>'],
    ["nothing", ""],
  ])("is refused with %s in it", (_, inside) => {
    expect(refused(svg(inside))).toMatch(/^KI-112 /);
  });

  it("is refused in another field, and as anything but SVG", () => {
    expect(refused(svg('<path class="line" d="M0 0L9 9"/>', "0 0 120 96"))).toMatch(/^KI-112 /);
    expect(refused("<html></html>")).toMatch(/^KI-112 /);
    expect(refused(svg("a".repeat(70_000)))).toMatch(/^KI-112 .*characters/);
  });
});
