/**
 * Board of 500 kits from 200,000 entries, and what one more entry costs, beside a peer that reads everything anew.
 * Run with `npm run bench`, or alone with `npx tsx bench/fold.ts`.
 */
import { compareEntries, type Entry } from "#log";
import type { Pattern } from "#kit";
import { foldKit, standingOf, type Bodies, type EntryKind, type KitState } from "#readiness";
import { createStationFold, type StationFold } from "#station";

const KITS = 500;
const PER_KIT = 400;
const TODAY = "2026-06-01";
const STEPS = Array.from({ length: 70 }, (_, index) => `step-${index}`);
/** No more than a second for the whole board, on the machine this was built for. */
const LIMIT_MS = 1000;

const PATTERN: Pattern = {
  id: "bench",
  version: 1,
  name: "Bench",
  summary: "Made up for measuring.",
  container: { name: "Drum", mass: 50, lifters: 2, places: [{ id: "p", name: "P" }], markings: [] },
  policy: { proofRun: { months: 12 }, muster: { days: 45 } },
  items: ["cells", "fuel", "gasket"].map((id) => ({
    id,
    name: id,
    place: "p",
    quantity: 1,
    life: { kind: "fitted", span: { months: 12 } },
    lapse: "grounds",
    extendable: false,
  })),
  modes: [],
  checks: [],
  stages: [
    {
      id: "run",
      name: "Run",
      steps: STEPS.map((id, index) => ({
        id,
        line: index + 1,
        text: id,
        checks: [],
        stows: [],
        renews: [],
        hazards: [],
        cautions: [],
        ...(index === 0 ? { timer: { kind: "run", atLeast: 60 } as const } : {}),
        measuresDelivery: false,
        needs: { people: 1, minutes: 1, tools: [] },
        optional: false,
      })),
    },
  ],
};

/** Writes a believable life of one kit: turnarounds of some hundred lines, musters between them. */
class KitWriter {
  readonly entries: Entry[] = [];
  private last: string | undefined;

  constructor(
    private readonly kit: number,
    private readonly many: number,
  ) {
    const items = PATTERN.items.map((item) => ({ item: item.id, fitted: "2026-01-01", quantity: 1 }));
    this.write("kit-enrolled", { name: `Kit ${kit}`, serial: `S${kit}`, seal: `${kit}-0`, items });
    for (let round = 1; this.entries.length < many; round++) this.turnRound(`t${kit}-${round}`, `${kit}-${round}`);
    this.entries.length = many;
  }

  private turnRound(turnaround: string, seal: string): void {
    this.write("turnaround-opened", { turnaround, because: "routine", sealSeen: "x" });
    for (const step of STEPS) this.write("step-answered", { turnaround, step, answer: "seen" });
    const started = "2026-01-01T00:00:00Z";
    this.write("timer-started", { turnaround, step: STEPS[0]! });
    this.write("timer-stopped", { turnaround, step: STEPS[0]!, started, seconds: 61, reached: true });
    this.write("pulls-counted", { turnaround, step: STEPS[1]!, pulls: 2, started: true });
    for (const { id: item } of PATTERN.items) {
      this.write("item-fitted", { turnaround, item, fitted: "2026-05-01", quantity: 1 });
    }
    this.write("sealed", { turnaround, seal });
    for (let time = 0; time < 4; time++) this.write("mustered", { sealSeen: seal, containerSound: true });
  }

  write<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind]): Entry {
    const number = this.entries.length;
    const entry = {
      id: idOf(this.kit, number),
      place: `place-${this.kit % 20}`,
      subject: `kit:k${this.kit}`,
      kind,
      at: new Date(Date.UTC(2024, 0, 1) + (number * 86_400_000) / Math.max(1, this.many / 850)).toISOString(),
      by: "ann",
      device: `d${number % 2}`,
      pattern: "bench@1",
      ...(this.last === undefined ? {} : { after: [this.last] }),
      body,
    };
    this.last = entry.id;
    this.entries.push(entry);
    return entry;
  }
}

function idOf(kit: number, number: number): string {
  const head = number.toString(16).padStart(12, "0");
  return `${head.slice(0, 8)}-${head.slice(8)}-7000-8000-${kit.toString(16).padStart(12, "0")}`;
}

/** Entries as a pull brings them: place by place, in order of arrival there. */
function logOf(kits: number, perKit: number): readonly Entry[] {
  const all = Array.from({ length: kits }, (_, kit) => new KitWriter(kit, perKit).entries).flat();
  return all.sort((one, other) => compareEntries(one, other));
}

function measure<Result>(work: () => Result): { readonly ms: number; readonly result: Result } {
  const [start, cpu] = [performance.now(), process.cpuUsage()];
  const result = work();
  const { user, system } = process.cpuUsage(cpu);
  return { ms: Math.min(performance.now() - start, (user + system) / 1000), result };
}

/** The least of some tries: with the lesser of wall and processor time, what it takes when nothing else runs here. */
function leastOf<Result>(tries: number, work: () => Result): { readonly ms: number; readonly result: Result } {
  const all = Array.from({ length: tries }, () => measure(work));
  return all.reduce((least, one) => (one.ms < least.ms ? one : least));
}

/** The peer: everything sorted and read anew with each change, by the same rules for one kit. */
function readAnew(entries: readonly Entry[]): ReadonlyMap<string, KitState> {
  const history = { entry: () => undefined, knew: () => true, madeApart: () => false };
  const kits = new Map<string, KitState>();
  for (const entry of entries.toSorted(compareEntries)) {
    const kit = foldKit(kits.get(entry.subject), [entry], history);
    if (kit) kits.set(entry.subject, kit);
  }
  return kits;
}

interface Row {
  readonly entries: number;
  readonly foldMs: number;
  readonly boardMs: number;
  readonly addedUs: number;
  readonly peerMs: number;
}

function benchSize(kits: number, perKit: number): Row {
  const entries = logOf(kits, perKit);
  const tries = entries.length > 400_000 ? 1 : 5;
  const { ms: foldMs, result: fold } = leastOf(tries, () => foldAll(entries));
  const { ms: boardMs } = leastOf(tries, () => fold.read().kits.map((kit) => standingOf(kit, PATTERN, TODAY, {})));
  return { entries: entries.length, foldMs, boardMs, addedUs: addOneByOne(fold, kits, perKit), peerMs: peer(entries) };
}

function foldAll(entries: readonly Entry[]): StationFold {
  const fold = createStationFold([PATTERN]);
  fold.add(entries);
  return fold;
}

/** Middle time of taking in one more entry and having its kit again [µs]. */
function addOneByOne(fold: StationFold, kits: number, perKit: number): number {
  const times = Array.from({ length: 201 }, (_, index) => {
    const kit = index % kits;
    const writer = new KitWriter(kit, perKit);
    const more = writer.write("mustered", { sealSeen: "z", containerSound: true });
    const entry = { ...more, id: idOf(kit + 100_000, perKit + index), at: `2027-01-01T00:00:00.${100 + index}Z` };
    return measure(() => fold.add([entry])).ms;
  });
  return times.toSorted((one, other) => one - other)[100]! * 1000;
}

function peer(entries: readonly Entry[]): number {
  return measure(() => readAnew(entries)).ms;
}

benchSize(50, PER_KIT);
const sizes = [KITS / 4, KITS, KITS * 4].map((kits) => benchSize(kits, PER_KIT));
console.log("entries   fold all   board of standings   one more entry   peer: all anew for one more");
for (const row of sizes) {
  const cells = [
    String(row.entries).padStart(7),
    `${row.foldMs.toFixed(0)} ms`.padStart(10),
    `${row.boardMs.toFixed(0)} ms`.padStart(20),
    `${row.addedUs.toFixed(0)} µs`.padStart(16),
    `${row.peerMs.toFixed(0)} ms`.padStart(29),
  ];
  console.log(cells.join(" "));
}
const board = sizes[1]!;
const total = board.foldMs + board.boardMs;
console.log(
  `Board of ${KITS} kits from ${board.entries} entries: ${total.toFixed(0)} ms, least of 5 (limit ${LIMIT_MS} ms).`,
);
if (total > LIMIT_MS) process.exitCode = 1;
