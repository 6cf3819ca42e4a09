import { readFileSync } from "node:fs";
import { headCode, readHeads, signHead } from "#log";
import { beforeAll, describe, expect, it } from "vitest";
import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import { drawQr } from "./qr.ts";

/** Dots across a picture of the whole code. */
const DOTS = 900;

/** Takes what is drawn, as squares on a page, and makes the picture that a scanner would see. */
function pictureOf(text: string): Uint8ClampedArray {
  const dots = new Uint8ClampedArray(DOTS * DOTS * 4).fill(255);
  const page = {
    rect(x: number, y: number, width: number, height: number) {
      for (let row = Math.round(y); row < Math.round(y + height); row++) {
        for (let at = Math.round(x); at < Math.round(x + width); at++)
          dots.fill(0, (row * DOTS + at) * 4, (row * DOTS + at) * 4 + 3);
      }
      return page;
    },
    fill: () => page,
  };
  drawQr(page as unknown as PDFKit.PDFDocument, text, { x: 0, y: 0, side: DOTS });
  return dots;
}

/** In Node there is no ImageData: the reader asks only for these. */
async function scan(text: string): Promise<string[]> {
  const picture = { data: pictureOf(text), width: DOTS, height: DOTS, colorSpace: "srgb" } as ImageData;
  const found = await readBarcodes(picture, { formats: ["QRCode"], tryHarder: true });
  return found.map((one) => one.text);
}

describe("the code on paper, read by ZXing-C++ (zxing-wasm 3.1.4)", () => {
  beforeAll(async () => {
    const file = new URL(import.meta.resolve("zxing-wasm/reader/zxing_reader.wasm"));
    const bytes = readFileSync(file);
    const wasmBinary = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    await prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });
  });

  it("gives the very head that was printed, for short and for long names of places", async () => {
    for (const place of ["north", "station", "p".repeat(64)]) {
      const head = { place, number: 2 ** 31 - 1, hash: "a5".repeat(32), root: "5a".repeat(32) };
      const signed = signHead(head, "2027-03-14T12:00:00.000Z", new Uint8Array(32).fill(7));
      const [code, ...more] = await scan(headCode(signed));
      expect(more).toEqual([]);
      expect(readHeads(code!)).toEqual([signed]);
    }
  });
});
