import { recallNote, type PartSetting } from "#readiness";
import { newestOfEach, patternKey, type Pattern } from "#kit";
import { STATION_PLACE } from "#log";
import { DAY_MS, HOUR_MS } from "./kit-plan.ts";
import type { LogWriter } from "./log-writer.ts";
import { dayOf } from "./log-writer.ts";
import { CREW, KEEPER, SECOND_CREW } from "./roster.ts";

/** One part of the demo's store, with what two years did to it. */
interface DemoPart {
  readonly id: string;
  /** The part in the words of the patterns. */
  readonly name: string;
  readonly unit?: string;
  readonly supplier: string;
  readonly cost: number;
  readonly leadTime: string;
  readonly shelfLife?: string;
  readonly keep: number;
  /** Received every so many days, so many, in lots of this name. */
  readonly every: number;
  readonly count: number;
  /** Used between two deliveries. */
  readonly used: number;
}

const MADE_UP = "Ravel Chandlery";

const PARTS: readonly DemoPart[] = [
  part("pull-seal", "Numbered pull-tight seal", {
    cost: 0.4,
    leadTime: "2 weeks",
    keep: 20,
    every: 120,
    count: 30,
    used: 30,
  }),
  part("desiccant", "Desiccant pack, 125 g, in foil", {
    cost: 3.2,
    leadTime: "4 weeks",
    shelfLife: "24 months",
    keep: 12,
    every: 120,
    count: 24,
    used: 24,
  }),
  part("coupling-gasket", "Coupling gasket, 2 in", {
    cost: 2.8,
    leadTime: "6 weeks",
    keep: 4,
    every: 180,
    count: 6,
    used: 6,
  }),
  part("spark-plug", "Spark plug, as on the engine plate", {
    cost: 6.5,
    leadTime: "2 weeks",
    keep: 3,
    every: 180,
    count: 5,
    used: 5,
  }),
  part("lid-gasket", "Lid gasket, one piece", {
    cost: 48,
    leadTime: "10 weeks",
    keep: 1,
    every: 360,
    count: 1,
    used: 1,
  }),
  part("recoil-starter", "Recoil starter, whole", {
    cost: 64,
    leadTime: "8 weeks",
    keep: 1,
    every: 360,
    count: 2,
    used: 1,
  }),
];

const PLACE = "boathouse";
const FIRST_DAYS_AGO = 700;
/** The lot that is recalled, of recoil starters. */
const BAD_LOT = "RS-2211";

function part(id: string, name: string, rest: Omit<DemoPart, "id" | "name" | "supplier">): DemoPart {
  return { id, name, supplier: MADE_UP, ...rest };
}

/** What the store is written with. */
export interface StockSetting {
  readonly writer: LogWriter;
  readonly patterns: readonly Pattern[];
  /** Midnight UTC at which today began. */
  readonly today: number;
}

/** Two years of one store: deliveries, use, counts, an order on its way, a lot recalled and an item taken for another kit. */
export function writeStock(setting: StockSetting): void {
  for (const [index, one] of PARTS.entries()) writePart(setting, one, index);
  writeOrder(setting);
  writeRecall(setting);
  writeRobbed(setting);
}

function writePart({ writer, patterns, today }: StockSetting, one: DemoPart, index: number): void {
  const line = { subject: `part:${one.id}`, place: STATION_PLACE, hand: KEEPER };
  const first = today - (FIRST_DAYS_AGO - index) * DAY_MS + 9 * HOUR_MS;
  writer.write({ ...line, kind: "part-set", ms: first, body: settingOf(one, patterns, index) });
  for (let ms = first + DAY_MS, lot = 1; ms < today - 20 * DAY_MS; ms += one.every * DAY_MS, lot += 1) {
    const received = { place: PLACE, count: one.count, day: dayOf(ms), lot: lotOf(one, lot) };
    writer.write({ ...line, kind: "stock-received", ms, body: received });
    const when = ms + (one.every - 10) * DAY_MS;
    if (when > today - 2 * DAY_MS) continue;
    const used = { place: PLACE, count: one.used, day: dayOf(when), lot: lotOf(one, lot), note: "Turnarounds." };
    writer.write({ ...line, hand: SECOND_CREW, kind: "stock-used", ms: when, body: used });
  }
}

function lotOf({ id }: DemoPart, number: number): string {
  return id === "recoil-starter"
    ? number === 2
      ? BAD_LOT
      : `RS-220${number}`
    : `${id.slice(0, 2).toUpperCase()}-${number}`;
}

function settingOf(one: DemoPart, patterns: readonly Pattern[], index: number): PartSetting {
  const { id: _id, keep, every: _every, count: _count, used: _used, unit = "piece", ...rest } = one;
  const items = patterns.flatMap((pattern) =>
    pattern.items
      .filter(({ part: named }) => named === one.name)
      .map(({ id: item }) => ({ pattern: pattern.id, item })),
  );
  const number = `P-${101 + index}`;
  return { number, unit, ...rest, printed: false, keep: [{ place: PLACE, least: keep }], items };
}

/** Gaskets that were promised and are late. */
function writeOrder({ writer, today }: StockSetting): void {
  const ms = today - 50 * DAY_MS + 10 * HOUR_MS;
  const order = {
    order: writer.newId(ms),
    place: PLACE,
    count: 6,
    day: dayOf(ms),
    expected: dayOf(today - 4 * DAY_MS),
  };
  const subject = "part:coupling-gasket";
  writer.write({ kind: "stock-ordered", subject, place: STATION_PLACE, ms, hand: KEEPER, body: order });
}

const GROUNDED = "br-12";
const HELPED = "br-05";

function onKit(kit: string, place: string, pattern: Pattern) {
  return { subject: `kit:${kit}`, place, pattern: patternKey(pattern) };
}

function powered(patterns: readonly Pattern[]): Pattern {
  const pattern = newestOfEach(patterns).find(({ engine }) => engine !== undefined);
  if (!pattern) throw new Error("The demo needs a pattern with an engine.");
  return pattern;
}

/** A starter of the bad lot went into one kit; its maker has called the lot back. */
function writeRecall({ writer, patterns, today }: StockSetting): void {
  const item = powered(patterns).items.find(({ part: named }) => named === "Recoil starter, whole")?.id;
  if (item === undefined) return;
  const line = onKit(GROUNDED, "all-weather-boat", powered(patterns));
  const fitted = today - 3 * DAY_MS + 9 * HOUR_MS;
  const drawn = { part: "recoil-starter", place: PLACE, lot: BAD_LOT };
  const body = { item, fitted: dayOf(fitted), quantity: 1, batch: BAD_LOT, drawn };
  writer.write({ ...line, kind: "item-fitted", ms: fitted, hand: KEEPER, body });
  const ms = today - 2 * DAY_MS + 9 * HOUR_MS;
  const said = { lot: BAD_LOT, reason: "The spring's hook cracks, says its maker.", effect: "notes" as const };
  const part = { subject: "part:recoil-starter", place: STATION_PLACE };
  writer.write({ ...part, kind: "lot-recalled", ms, hand: KEEPER, body: said });
  const note = recallNote({ name: "Recoil starter, whole" }, said);
  const finding = { finding: writer.newId(ms), item, mode: "other", effect: said.effect, note, photos: [] };
  writer.write({ ...line, kind: "finding-raised", ms, hand: KEEPER, body: finding });
}

/** The reflective tape of the grounded kit went onto the one that stands open. */
function writeRobbed({ writer, patterns, today }: StockSetting): void {
  const pattern = powered(patterns);
  const item = pattern.items.find(({ part: named, life }) => named !== undefined && life.kind === "none")?.id;
  if (item === undefined) return;
  const ms = today - DAY_MS + 16 * HOUR_MS;
  const robbed = {
    item,
    quantity: 1,
    to: HELPED,
    finding: writer.newId(ms),
    mode: "other",
    effect: "notes" as const,
    note: "Taken for Pump 5",
  };
  const from = onKit(GROUNDED, "all-weather-boat", pattern);
  writer.write({ ...from, kind: "item-robbed", ms, hand: CREW, body: robbed });
  const fitted = { item, fitted: dayOf(ms), quantity: 1, robbed: GROUNDED };
  const into = onKit(HELPED, PLACE, pattern);
  writer.write({ ...into, kind: "item-fitted", ms: ms + 10 * 60_000, hand: CREW, body: fitted });
}
