import { inflateSync } from "node:zlib";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoAccounts, demoEntries } from "#demo";
import { linesOf, newestOfEach } from "#kit";
import { signHead, type LinesProof } from "#log";
import { createStationFold, standingAt, type Photo } from "#station";
import { readPatternFolders } from "#store/patterns";
import { recordOf as recordOfLines, saySeen, standingInWords } from "#readiness";
import { amissPictures } from "./pictures/amiss-pictures.ts";
import { renderPatternCard, renderTurnaroundRecord } from "./index.ts";
import { isAmiss, linesOfKind, said, summaryOf } from "#station";
import { ENGLISH } from "#words";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "patterns")]);
const fold = createStationFold(patterns);
fold.add(demoEntries({ patterns, today: "2027-03-14", seed: 7 }));
const reading = fold.read();
const people = new Map(demoAccounts().map(({ person, name }) => [person, name]));
const now = "2027-03-14T12:00:00Z";

function pages(pdf: Uint8Array): number {
  return [
    ...Buffer.from(pdf)
      .toString("latin1")
      .matchAll(/\/Type \/Page\b(?!s)/g),
  ].length;
}

/** Pictures held in the file, by their size in pixels. */
function pictures(pdf: Uint8Array): string[] {
  const text = Buffer.from(pdf).toString("latin1");
  return [...text.matchAll(/\/Subtype \/Image[\s\S]*?\/Width (\d+)[\s\S]*?\/Height (\d+)/g)].map(
    (match) => `${match[1]}x${match[2]}`,
  );
}

function turnaroundIn(body: unknown): unknown {
  return (body as { readonly turnaround?: unknown } | undefined)?.turnaround;
}

function recordOf(name: string, photos: ReadonlyMap<string, Photo> = new Map()) {
  const kit = reading.kits.find((one) => one.name === name)!;
  const turnaround = kit.turnarounds.at(-1)!;
  const pattern = reading.patterns.get(kit.pattern)!;
  const standing = standingInWords(standingAt(kit, reading, "2027-03-14"), ENGLISH.standing);
  return {
    stationName: reading.stationName,
    placeName: "Boathouse",
    kit,
    turnaround,
    pattern,
    standing,
    people,
    proofs: [proofOf(150)],
    late: [],
    entries: fold.entriesOf(`kit:${kit.id}`).filter(({ body }) => turnaroundIn(body) === turnaround.id),
    photos,
    units: "metric" as const,
    now,
  };
}

/** As a station prints it: so many lines one after another, under one signed head. */
function proofOf(many: number): LinesProof {
  const head = { place: "boathouse", number: 17_541, hash: "ab".repeat(32), root: "cd".repeat(32) };
  const [kept] = fold.entriesOf(`kit:${reading.kits[0]!.id}`);
  const line = { entry: kept!, hash: "ef".repeat(32), received: now, previous: "01".repeat(32), path: [] };
  return {
    head: signHead(head, now, new Uint8Array(32).fill(7)),
    lines: Array.from({ length: many }, (_, at) => ({ ...line, seq: 17_000 + at })),
  };
}

describe("record of a turnaround", () => {
  const clean = new Map(
    reading.kits
      .filter(({ findings, turnarounds }) => !findings.some((one) => one.turnaround === turnarounds.at(-1)?.id))
      .filter(({ turnarounds }) => turnarounds.length > 0)
      .map((kit) => [kit.pattern, kit.name]),
  );

  it.each(newestOfEach(patterns).map(({ id, version }) => `${id}@${version}`))(
    "of a clean turnaround of %s is a PDF of at most 4 pages",
    async (pattern) => {
      const pdf = await renderTurnaroundRecord(recordOf(clean.get(pattern)!));
      expect(Buffer.from(pdf.slice(0, 5)).toString()).toBe("%PDF-");
      expect(pages(pdf)).toBeLessThanOrEqual(4);
    },
  );

  it("of a new kit's first turnaround, each of its dates read at the line, is at most 4 pages too", async () => {
    const record = recordOf(clean.get("brinnet-450@2")!);
    const dated = record.pattern.items.filter(({ life }) => life.kind === "fitted");
    const [any] = record.entries;
    const reads = dated.map(({ id }) => ({
      ...any!,
      id: `read-${id}`,
      kind: "date-read",
      body: { turnaround: record.turnaround.id, step: "lid-off", item: id, of: "fitted", date: "2025-01-31" },
    }));
    const pdf = await renderTurnaroundRecord({ ...record, entries: [...record.entries, ...reads] });
    expect(reads.length).toBeGreaterThanOrEqual(12);
    expect(pages(pdf)).toBeLessThanOrEqual(4);
  });

  it("tells every line in the words of the screen, every reading with its limits, and one taken again with both", () => {
    const record = recordOf("Pump 1");
    const check = record.pattern.checks.find(({ id }) => id === "letters-lid")!;
    const line = recordOfLines(record.turnaround, record.pattern).find((one) => one.check === check.id)!;
    const [standing] = linesOfKind(record.entries, "step-answered").filter(({ body }) => body.check === check.id);
    const value = { kind: "quantity", si: 0.045, dimension: "length", text: "45 mm" } as const;
    const first = { ...standing!, id: "earlier", body: { ...standing!.body, answer: "wrong" as const, value } };
    const again = { ...record, entries: [first, ...record.entries] };
    expect(said(record, line)).toContain(saySeen(check, ENGLISH.act));
    expect(said(again, line)).toMatch(/\(45 mm, then .*\smm; at least 48\.0\smm\)/);
    expect(isAmiss(record, line)).toBe(false);
    expect(isAmiss(again, line)).toBe(true);
  });

  it("shows the place of what was amiss, lit in its drawing, and no drawing where nothing was", () => {
    const record = recordOf("Pump 1");
    expect(amissPictures(record)).toEqual([]);
    const [standing] = linesOfKind(record.entries, "step-answered").filter(({ body }) => body.check === "stops-count");
    const first = { ...standing!, id: "earlier", body: { ...standing!.body, answer: "wrong" as const } };
    const [shown, ...others] = amissPictures({ ...record, entries: [first, ...record.entries] });
    expect(shown?.picture).toMatchObject({ id: "tank", lit: ["tank-stops"] });
    expect(shown?.caption).toMatch(/^Line \d+[a-z]: Rubber stops$/);
    expect(others).toEqual([]);
  });

  it("tells of a look that was wrong before it was right, though nothing was measured", () => {
    const record = recordOf("Pump 1");
    const lines = recordOfLines(record.turnaround, record.pattern);
    const isLook = (id: string | undefined) => record.pattern.checks.find((one) => one.id === id)?.kind === "look";
    const line = lines.find(({ check }) => isLook(check))!;
    const [standing] = linesOfKind(record.entries, "step-answered").filter(({ body }) => body.check === line.check);
    const first = { ...standing!, id: "earlier", body: { ...standing!.body, answer: "wrong" as const } };
    const again = { ...record, entries: [first, ...record.entries] };
    expect(isAmiss(record, line)).toBe(false);
    expect(isAmiss(again, line)).toBe(true);
    expect(said(again, line)).toMatch(/^FOUND WRONG at 09:12, then /);
  });

  it("names who saw a thing done, and why nobody did", () => {
    const record = recordOf("Pump 1");
    const { opened } = record.turnaround;
    const seconds = [
      { ...opened, qualification: "q", second: "nobody-known" },
      { ...opened, qualification: "q", note: "Tide turning." },
    ];
    const rows = summaryOf({ ...record, turnaround: { ...record.turnaround, seconds } }).map(({ cells }) => cells);
    expect(rows.filter(([name]) => name === "Seen done")[0]![1]).toMatch(/^nobody-known saw what .* did, /);
    expect(rows.filter(([name]) => name === "Gone on alone")[0]![1]).toMatch(/: Tide turning\.$/);
  });

  it("says how the seal was read first, beside the reading that opened the kit", () => {
    const record = recordOf("Pump 1");
    const opened = {
      ...record.turnaround.opened,
      sealSeen: "00417",
      sealReadBefore: ["00471", ""],
      sealOnRecord: "00417",
    };
    const rows = summaryOf({ ...record, turnaround: { ...record.turnaround, opened } }).map(({ cells }) => cells);
    expect(rows.find(([name]) => name === "Seal read")?.[1]).toBe(
      "00417, read before that as 00471, no seal found; 00417 was on record",
    );
  });

  it("embeds its own typeface, which has the symbols that quantities need", async () => {
    const pdf = Buffer.from(await renderTurnaroundRecord(recordOf("Pump 1"))).toString("latin1");
    expect(pdf).toMatch(/AtkinsonHyperlegible/);
    expect(pdf).not.toMatch(/\/BaseFont \/(Helvetica|Times|Courier)/);
  });

  it("holds the photos of its findings, and says so of one that has not arrived", async () => {
    const record = recordOf("Pump 12");
    const ref = { hash: "a".repeat(64), mime: "image/png", bytes: 0, width: 2, height: 3 } as const;
    const found = record.kit.findings.findLast(({ turnaround }) => turnaround === record.turnaround.id)!;
    const finding = { ...found, photos: [ref] };
    const kit = { ...record.kit, findings: [finding] };
    const photos = new Map([[ref.hash, { hash: ref.hash, mime: ref.mime, bytes: tinyPng() }]]);
    expect(pictures(await renderTurnaroundRecord({ ...record, kit, photos }))).toContain("2x3");
    expect(pictures(await renderTurnaroundRecord({ ...record, kit }))).toEqual([]);
  });

  it("is the same file for the same record", async () => {
    const [one, other] = [
      await renderTurnaroundRecord(recordOf("Pump 2")),
      await renderTurnaroundRecord(recordOf("Pump 2")),
    ];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });
});

describe("card of a pattern", () => {
  it.each(newestOfEach(patterns).map((pattern) => [pattern.id, pattern] as const))(
    "prints every line of %s",
    async (_, pattern) => {
      const rows = [1, 2].map((lift) => ({
        lift,
        flow: 0.006,
        low: 0.005,
        high: 0.007,
        because: "the pump's own curve",
      }));
      const card = {
        stationName: "Brannock Reach",
        pattern,
        units: "us" as const,
        now,
        delivery: { rows, setting: "Full throttle." },
      };
      const pdf = await renderPatternCard(card);
      expect(pages(pdf)).toBeGreaterThan(linesOf(pattern).length / 50);
      expect(pages(pdf)).toBeLessThanOrEqual(6);
    },
  );
});

/** A picture of 2 by 3 pixels, put together by hand from the PNG specification. */
function tinyPng(): Uint8Array {
  const base64 = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAADCAIAAAA2iEnWAAAAEElEQVR4nGM4IQcEJxhQKABAEQYZ0vND3gAAAABJRU5ErkJggg==";
  const bytes = new Uint8Array(Buffer.from(base64, "base64"));
  expect(inflateSync(Buffer.from(bytes).subarray(41, 41 + 16)).length).toBe(3 * (1 + 2 * 3));
  return bytes;
}
