import type { Entry } from "#log";

/** Entries for the stores' contract. Ids are unique within a run, so that databases can be shared by its tests. */
export class EntryMaker {
  #made = 0;
  readonly #run: number;

  constructor(run: number) {
    this.#run = run;
  }

  /** A valid entry, later than all made before. */
  next(change: Partial<Entry> = {}): Entry {
    this.#made += 1;
    return {
      id: idOf(this.#run, this.#made),
      place: `harbour-${this.#run}`,
      subject: "kit:one",
      kind: "mustered",
      at: new Date(Date.UTC(2027, 0, 1) + this.#made * 1000).toISOString(),
      by: "person-1",
      device: "device-1",
      body: { sealSeen: "00417", note: "Dichtung trocken – \u{1F527}", turns: [1, 2.5, null, true] },
      ...change,
    };
  }

  many(count: number, change: Partial<Entry> = {}): Entry[] {
    return Array.from({ length: count }, () => this.next(change));
  }
}

function idOf(run: number, number: number): string {
  return `01940000-0000-7${hex(run, 3)}-8000-${hex(number, 12)}`;
}

function hex(value: number, digits: number): string {
  return value.toString(16).padStart(digits, "0");
}
