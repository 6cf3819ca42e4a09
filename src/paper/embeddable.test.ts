import { describe, expect, it } from "vitest";
import { isEmbeddable } from "./embeddable.ts";

const PNG_HEAD = "89504e470d0a1a0a";
const NO_SUM = "00000000";

function png(...chunks: string[]): Uint8Array {
  return Buffer.from(PNG_HEAD + chunks.join(""), "hex");
}

function chunk(name: string, content: string, length = content.length / 2): string {
  return length.toString(16).padStart(8, "0") + Buffer.from(name).toString("hex") + content + NO_SUM;
}

function header({ depth = "08", colour = "02", interlaced = "00", width = "00000002" } = {}): string {
  return chunk("IHDR", `${width}00000003${depth}${colour}0000${interlaced}`);
}

const DATA = chunk("IDAT", "78da");
const END = chunk("IEND", "");
/** Start, a comment of four bytes, and a frame of three colours, 16 by 8. */
const JPEG = "ffd8fffe0006abcdabcdffc0001108000800100301";

describe("a picture for a PDF", () => {
  it.each([
    ["a PNG in colour", png(header(), DATA, END)],
    ["a PNG in grey", png(header({ colour: "00" }), DATA, END)],
    ["a PNG with a text in it", png(header(), chunk("tEXt", "6162"), DATA, END)],
  ])("may be %s", (_, bytes) => {
    expect(isEmbeddable({ hash: "", mime: "image/png", bytes })).toBe(true);
  });

  it.each([
    ["no chunk at all", png()],
    ["junk", png("ab".repeat(100))],
    ["transparency", png(header({ colour: "06" }), DATA, END)],
    ["a palette", png(header({ colour: "03" }), DATA, END)],
    ["sixteen bits", png(header({ depth: "10" }), DATA, END)],
    ["interlacing", png(header({ interlaced: "01" }), DATA, END)],
    ["no width", png(header({ width: "00000000" }), DATA, END)],
    ["a chunk longer than the file", png(header(), chunk("IDAT", "78da", 0xffffffff), END)],
    ["no data", png(header(), END)],
    ["no end", png(header(), DATA)],
    ["two headers", png(header(), header(), DATA, END)],
  ])("is no PNG with %s", (_, bytes) => {
    expect(isEmbeddable({ hash: "", mime: "image/png", bytes })).toBe(false);
  });

  it.each([
    ["whole", JPEG, true],
    ["cut off within its frame", JPEG.slice(0, -8), false],
    ["a start and then a page", `ffd8ffe0${Buffer.from("<html></html>").toString("hex")}`, false],
    ["a segment of no length", "ffd8fffe0000abcdabcdabcdabcdabcd", false],
    ["of no colours", `${JPEG.slice(0, -4)}0001`, false],
  ])("a JPEG that is %s", (_, hex, expected) => {
    expect(isEmbeddable({ hash: "", mime: "image/jpeg", bytes: Buffer.from(hex, "hex") })).toBe(expected);
  });

  it("is never a WebP, which no PDF can hold", () => {
    expect(isEmbeddable({ hash: "", mime: "image/webp", bytes: Buffer.from("RIFF    WEBP") })).toBe(false);
  });
});
