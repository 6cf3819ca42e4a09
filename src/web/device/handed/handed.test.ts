import { isInputError } from "#base";
import type { Entry } from "#log";
import fc from "fast-check";
import { deflateRawSync } from "node:zlib";
import { describe, expect, it, test } from "vitest";
import { fromBase45, toBase45 } from "./base45.ts";
import { packSheet, readPieces, unpackSheet, type SheetBundle } from "./bundle.ts";
import { sortHanded, type Known } from "./handed-lines.ts";
import { waitingForHanded } from "./handed-shelf.ts";
import { cutIntoPieces, MOST_PIECES, PieceTray, readPiece } from "./pieces.ts";
import { stationMarkOf } from "./station-mark.ts";

const OURS = stationMarkOf("a".repeat(64));
const THEIRS = stationMarkOf("b".repeat(64));
const SHEET = "01920000-0000-7000-8000-00000000000c";
const NOW = "2027-03-14T11:00:00.000Z";

function lineOf(number: number, change: Partial<Entry> = {}): Entry {
  return {
    id: `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`,
    place: "station",
    subject: `casualty:${SHEET}`,
    kind: "sounding-taken",
    at: new Date(Date.UTC(2027, 2, 14, 10) + number * 1000).toISOString(),
    by: "jonas",
    device: "phone",
    body: { space: "e1", level: number / 1000, text: `${number} mm` },
    ...change,
  };
}

function bundleOf(count: number): SheetBundle {
  const lines = Array.from({ length: count }, (_, at) => lineOf(at + 1));
  return { sheet: SHEET, made: NOW, by: "jonas", device: "phone", lines };
}

function trayOf(pieces: readonly string[]): PieceTray {
  const tray = new PieceTray();
  for (const piece of pieces) tray.add(readPiece(piece));
  return tray;
}

async function codeOf(act: () => unknown): Promise<string> {
  try {
    await act();
  } catch (cause) {
    if (isInputError(cause)) return cause.faults[0]!.code;
    throw cause;
  }
  return "none";
}

describe("base 45", () => {
  test.each([
    ["AB", "BB8"],
    ["Hello!!", "%69 VD92EX0"],
    ["base-45", "UJCLQE7W581"],
    ["ietf!", "QED8WEX0"],
  ])("writes %s as RFC 9285, sections 4.3 and 4.4, prints it", (text, code) => {
    expect(toBase45(new TextEncoder().encode(text))).toBe(code);
    expect(new TextDecoder().decode(fromBase45(code))).toBe(text);
  });

  test.each(["GGW", ":::", "A", "AAAA", "a12", "ZZ"])("refuses %s as RFC 9285, section 6, says", (code) => {
    expect(fromBase45(code)).toBeUndefined();
  });

  it("gives back any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(bytes);
      }),
      { seed: 9285 },
    );
  });
});

describe("pieces of a sheet", () => {
  it("fit a code each, and say whose they are and which of how many", async () => {
    const pieces = await packSheet(bundleOf(60), OURS);
    expect(pieces.length).toBeGreaterThan(2);
    for (const [at, piece] of pieces.entries()) {
      expect(piece).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
      expect(piece.length).toBeLessThanOrEqual(667);
      expect(readPiece(piece)).toMatchObject({ sheet: SHEET, number: at + 1, of: pieces.length });
    }
  });

  it("are short: sixty soundings in at most ten", async () => {
    expect((await packSheet(bundleOf(60), OURS)).length).toBeLessThanOrEqual(10);
  });

  it("law: make the same in any order and however often each comes", () => {
    const whole = fc.uint8Array({ minLength: 1, maxLength: 4000 });
    fc.assert(
      fc.property(whole, fc.infiniteStream(fc.nat()), (bytes, random) => {
        const pieces = cutIntoPieces("c1", bytes);
        const tray = new PieceTray();
        const left = new Set(pieces);
        for (const number of random) {
          const piece = pieces[number % pieces.length]!;
          expect(tray.isFull).toBe(false);
          tray.add(readPiece(piece));
          left.delete(piece);
          expect(tray.missing).toHaveLength(left.size);
          if (left.size === 0) break;
        }
        expect(tray.whole()).toEqual(bytes);
      }),
      { seed: 14, numRuns: 60 },
    );
  });

  it("law: one letter changed, left out or put in is found out", () => {
    const [piece] = cutIntoPieces(
      "c1",
      Uint8Array.from({ length: 90 }, (_, at) => (at * 37) % 256),
    );
    const letters = fc.constantFrom(..."0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:");
    fc.assert(
      fc.property(fc.nat(piece!.length - 1), letters, fc.constantFrom("change", "cut", "add"), (at, letter, how) => {
        const rest = piece!.slice(how === "add" ? at : at + 1);
        const changed = piece!.slice(0, at) + (how === "cut" ? "" : letter) + rest;
        fc.pre(changed.trim() !== piece);
        expect(() => readPiece(changed)).toThrow(/WE-12[0-4]/);
      }),
      { seed: 15, numRuns: 500 },
    );
  });

  it("of another sheet, or of the same as it stands now, begin anew", async () => {
    const tray = trayOf((await packSheet(bundleOf(60), OURS)).slice(0, 2));
    const next = await packSheet(bundleOf(61), OURS);
    expect(tray.add(readPiece(next[0]!))).toBe("begun-anew");
    expect(tray.add(readPiece(next[0]!))).toBe("again");
    expect(tray.missing).toEqual(next.map((_, at) => at + 1).slice(1));
  });

  it("are refused where they are no pieces, of another version, damaged or too many", async () => {
    const [piece] = await packSheet(bundleOf(1), OURS);
    expect(await codeOf(() => readPiece("https://example.org/"))).toBe("WE-120");
    expect(await codeOf(() => readPiece(""))).toBe("WE-120");
    expect(await codeOf(() => readPiece(piece!.replace("DRYKEEL:1:", "DRYKEEL:2:")))).toBe("WE-121");
    expect(await codeOf(() => readPiece(piece!.replace("DRYKEEL:1:", "DRYKEEL:0:")))).toBe("WE-121");
    expect(await codeOf(() => readPiece(piece!.slice(0, -3)))).toBe("WE-122");
    expect(await codeOf(() => readPiece(`DRYKEEL:1:C1:${"0".repeat(16)}:1/${MOST_PIECES + 1}:00000000:`))).toBe(
      "WE-124",
    );
    expect(await codeOf(() => cutIntoPieces("c1", new Uint8Array(360 * MOST_PIECES + 1)))).toBe("WE-124");
    expect(await codeOf(() => cutIntoPieces("C 1", new Uint8Array(1)))).toBe("WE-127");
  });
});

describe("a sheet handed over", () => {
  it("law: comes out as it went in, by file as by code", () => {
    return fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: 120 }), fc.constantFrom("\n", "\r\n"), async (count, end) => {
        const pieces = await packSheet(bundleOf(count), OURS);
        expect((await unpackSheet(trayOf(pieces.toReversed()).whole(), OURS)).lines).toEqual(bundleOf(count).lines);
        expect(await unpackSheet(readPieces(pieces.join(end) + end), OURS)).toEqual(bundleOf(count));
      }),
      { seed: 16, numRuns: 10 },
    );
  });

  it("of another station is refused, and one that is stamped with nothing", async () => {
    const whole = readPieces((await packSheet(bundleOf(3), THEIRS)).join("\n"));
    expect(await codeOf(() => unpackSheet(whole, OURS))).toBe("WE-125");
    const posing = { ...THEIRS, mark: OURS.mark };
    const posed = readPieces((await packSheet(bundleOf(3), posing)).join("\n"));
    expect(await codeOf(() => unpackSheet(posed, OURS))).toBe("WE-125");
  });

  it("that unpacks to very much is not unpacked: 140 kB that stand for 140 MB", async () => {
    const bomb = deflateRawSync(Buffer.alloc(140_000_000, 32));
    expect(bomb.length).toBeLessThan(140_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await codeOf(() => unpackSheet(bomb, OURS))).toBe("WE-124");
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
  });

  it("that is cut short, or is no packed text, is refused", async () => {
    const pieces = await packSheet(bundleOf(60), OURS);
    const whole = readPieces(pieces.join("\n"));
    expect(await codeOf(() => unpackSheet(whole.subarray(0, whole.length - 5), OURS))).toBe("WE-123");
    expect(await codeOf(() => unpackSheet(new Uint8Array(50).fill(255), OURS))).toBe("WE-123");
    expect(await codeOf(() => unpackSheet(deflateRawSync("another text\nand more"), OURS))).toBe("WE-120");
    expect(await codeOf(() => unpackSheet(deflateRawSync("drykeel-sheet 2 x y\n{}"), OURS))).toBe("WE-121");
    expect(await codeOf(() => readPieces(pieces.slice(1).join("\n")))).toBe("WE-123");
    expect(await codeOf(() => readPieces("a shopping list"))).toBe("WE-120");
    expect(await codeOf(() => readPieces(" \n"))).toBe("WE-120");
  });

  it("does not show the key in what anybody can read of it", async () => {
    const text = (await packSheet(bundleOf(1), OURS)).join("");
    expect(text).not.toContain("A".repeat(64));
    expect(OURS.mark).not.toBe(THEIRS.mark);
  });
});

const KNOWN: Known = {
  now: NOW,
  people: [
    { id: "jonas", name: "Jonas", role: "crew", left: false },
    { id: "petra", name: "Petra", role: "assessor", left: false },
    { id: "mara", name: "Mara", role: "keeper", left: false },
  ],
  devices: [{ id: "lost", name: "Lost", shutOut: true } as Known["devices"][number]],
  find: (_, id) => (id === lineOf(1).id ? lineOf(1) : undefined),
};

function faultsOf(...lines: readonly unknown[]): readonly string[] {
  return sortHanded(lines, KNOWN).refused.flatMap(({ faults }) => faults.map(({ code }) => code));
}

describe("lines handed over", () => {
  it("are taken once, and those held here are not taken again", () => {
    const sorted = sortHanded([lineOf(2), lineOf(1), lineOf(2)], KNOWN);
    expect(sorted.fresh).toEqual([lineOf(2)]);
    expect(sorted.known).toBe(2);
    expect(sorted.refused).toEqual([]);
  });

  it("are refused by the station's own rules: role, subject, time, a changed line, a device shut out, no line at all", () => {
    expect(faultsOf(lineOf(2, { by: "petra" }))).toEqual(["SN-103"]);
    expect(faultsOf(lineOf(2, { kind: "of-tomorrow" }))).toEqual(["RD-101"]);
    expect(faultsOf(lineOf(2, { at: "2027-03-14T12:00:00.000Z" }))).toEqual(["WE-131"]);
    expect(faultsOf(lineOf(1, { body: { space: "e1", level: 0.9, text: "90 cm" } }))).toEqual(["WE-130"]);
    expect(faultsOf(lineOf(2, { device: "lost" }))).toEqual(["WE-133"]);
    expect(faultsOf("a line")).toEqual(["LG-101"]);
    const person = lineOf(2, { subject: "person:jonas", kind: "person-changed", body: { role: "administrator" } });
    expect(faultsOf(person)).toContain("WE-132");
  });

  it("each name the line refused: what it was, or its place where it is none", () => {
    const { refused } = sortHanded([lineOf(2), "a line", lineOf(3, { by: "petra" })], KNOWN);
    expect(refused).toMatchObject([
      { place: 2, faults: [{ code: "LG-101" }] },
      { place: 3, entry: lineOf(3, { by: "petra" }), faults: [{ code: "SN-103" }] },
    ]);
  });

  it("strike only what their writer may strike, whatever the order", () => {
    const strike = (number: number, by: string) =>
      lineOf(number, { kind: "struck", by, body: { entry: lineOf(2).id, reason: "Slip." } });
    expect(faultsOf(strike(3, "jonas"), lineOf(2))).toEqual([]);
    expect(faultsOf(strike(3, "mara"), lineOf(2))).toEqual([]);
    expect(faultsOf(strike(3, "nobody-known"), lineOf(2))).toEqual(["SN-106"]);
    expect(faultsOf(strike(3, "jonas"))).toEqual(["SN-106"]);
  });
});

describe("one's own lines", () => {
  it("wait where they strike what the station does not have yet, and the strike of such a strike too", () => {
    const strike = (number: number, entry: number) =>
      lineOf(number, { kind: "struck", body: { entry: lineOf(entry).id, reason: "Slip." } });
    const own = [lineOf(5), strike(6, 2), strike(7, 6), strike(8, 5)];
    expect([...waitingForHanded(own, new Set([lineOf(2).id]))]).toEqual([lineOf(6).id, lineOf(7).id]);
    expect(waitingForHanded(own, new Set()).size).toBe(0);
  });
});
