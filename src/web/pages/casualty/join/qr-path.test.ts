import { createRequire } from "node:module";
import { readFile } from "node:fs/promises";
import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import { beforeAll, describe, expect, test } from "vitest";
import { packSheet } from "#web/device/handed/bundle.ts";
import { readPieces } from "#web/device/handed/bundle.ts";
import { stationMarkOf } from "#web/device/handed/station-mark.ts";
import { qrPathOf } from "./qr-path.ts";

beforeAll(async () => {
  const path = createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm");
  prepareZXingModule({ overrides: { wasmBinary: (await readFile(path)).buffer as ArrayBuffer } });
});

/** Dark and light dots, as a screen draws the path: every outline is of whole fields. */
function drawn(text: string, dots: number): ImageData {
  const { path, fields } = qrPathOf(text);
  const side = (fields + 8) * dots;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  const outlines = path.split("Z").filter(Boolean).map(cornersOf);
  for (let row = 0; row < fields; row += 1) {
    const crossings = outlines
      .flatMap((corners) => crossingsAt(corners, row + 0.5))
      .toSorted((one, other) => one - other);
    for (let at = 0; at + 1 < crossings.length; at += 2) {
      for (let column = crossings[at]!; column < crossings[at + 1]!; column += 1) darken(column, row);
    }
  }
  function darken(column: number, row: number): void {
    for (let dot = 0; dot < dots * dots; dot += 1) {
      const [x, y] = [(column + 4) * dots + (dot % dots), (row + 4) * dots + Math.floor(dot / dots)];
      data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, width: side, height: side, colorSpace: "srgb" } as ImageData;
}

type Corner = readonly [number, number];

function cornersOf(outline: string): readonly Corner[] {
  return [...outline.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map((match): Corner => [Number(match[1]), Number(match[2])]);
}

function crossingsAt(corners: readonly Corner[], y: number): readonly number[] {
  return corners.flatMap(([x, from], at) => {
    const [, to] = corners[(at + 1) % corners.length]!;
    return from < y !== to < y ? [x] : [];
  });
}

describe("a sheet's codes as they are drawn", () => {
  test("are read by ZXing as the pieces they were, none of more fields than version 14 has (ISO/IEC 18004: 73)", async () => {
    const mark = stationMarkOf("c".repeat(64));
    const lines = Array.from({ length: 20 }, (_, number) => ({
      id: `01920000-0000-7000-8000-0000000000${String(number).padStart(2, "0")}`,
      place: "station",
      subject: "casualty:c1",
      kind: "sounding-taken",
      at: "2027-03-14T10:00:00.000Z",
      by: "jonas",
      device: "phone",
      body: { space: "e1", level: number / 100, text: `${number} cm` },
    }));
    const pieces = await packSheet({ sheet: "c1", made: lines[0]!.at, by: "jonas", device: "phone", lines }, mark);
    const read: string[] = [];
    for (const piece of pieces) {
      expect(qrPathOf(piece).fields).toBeLessThanOrEqual(73);
      const [found] = await readBarcodes(drawn(piece, 3), { formats: ["QRCode"] });
      read.push(found?.text ?? "");
    }
    expect(read).toEqual(pieces);
    expect(readPieces(read.join("\n")).length).toBeGreaterThan(300);
  });
});
