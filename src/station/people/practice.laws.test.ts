import type { Entry } from "#log";
import { practiceOf, type Bodies, type EntryKind, type JudgedDoing } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { SMALL_PATTERN } from "../sample-station.ts";
import { createStationFold } from "../station-fold.ts";

/** One of two devices, each of which writes in sight of its own lines and of those both began with. */
class Pen {
  readonly lines: Entry[];
  readonly #heads: Map<string, string>;

  constructor(
    readonly device: string,
    begun: readonly Entry[] = [],
  ) {
    this.lines = [];
    this.#heads = new Map(begun.map(({ subject, id }) => [subject, id]));
  }

  write<Kind extends EntryKind>(by: string, day: number, subject: string, kind: Kind, body: Bodies[Kind]): Entry {
    const before = this.#heads.get(subject);
    const entry = {
      id: `${this.device}-${this.lines.length}`,
      place: subject.startsWith("kit:") ? "north" : "station",
      subject,
      kind,
      at: instant(day, this.lines.length),
      by,
      device: this.device,
      ...(subject.startsWith("kit:") && { pattern: "small@1" }),
      ...(before !== undefined && { after: [before] }),
      body,
    };
    this.#heads.set(subject, entry.id);
    this.lines.push(entry);
    return entry;
  }
}

const START = Date.UTC(2026, 0, 1);
const DAY = 86_400_000;
const instant = (day: number, step: number) => new Date(START + day * DAY + step * 60_000).toISOString();
const EVERY = 60;
const RULE = { name: "Restowing", ties: [{ to: "stage", stage: "restow" }], every: `${EVERY} days` } as const;

function begun(): readonly Entry[] {
  const pen = new Pen("desk");
  pen.write("ann", 0, "person:ann", "person-joined", { name: "Ann", role: "keeper" });
  for (const id of ["ben", "cat", "dan"]) {
    pen.write("ann", 0, `person:${id}`, "person-joined", { name: id, role: "crew" });
  }
  pen.write("ann", 10, "qualification:q", "qualification-set", { ...RULE, seenBy: "holders", alone: "with-note" });
  return pen.lines;
}

const PEOPLE = ["ann", "ben", "cat", "dan"] as const;
const person = fc.constantFrom(...PEOPLE);
const day = fc.integer({ min: 1, max: 300 });

const deed = fc.oneof(
  { weight: 6, arbitrary: fc.record({ do: fc.constant("work" as const), by: person, day, second: fc.option(person) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("tell" as const), of: person, day }) },
);
const deeds = fc.array(deed, { maxLength: 9 });

function written(device: string, all: readonly (typeof deed extends fc.Arbitrary<infer D> ? D : never)[]) {
  const pen = new Pen(device, begun());
  for (const [at, one] of all.toSorted((a, b) => a.day - b.day).entries()) {
    if (one.do === "tell") {
      const body = { qualification: "q", day: instant(one.day, 0).slice(0, 10), how: "A drill." };
      pen.write("ann", one.day, `person:${one.of}`, "practice-told", body);
      continue;
    }
    const [kit, turnaround] = [`kit:${device}`, `${device}-t${at}`];
    pen.write(one.by, one.day, kit, "turnaround-opened", { turnaround, because: "routine", sealSeen: "1" });
    if (one.second !== null) {
      pen.write(one.by, one.day, kit, "second-named", { turnaround, qualification: "q", second: one.second });
    }
    pen.write(one.by, one.day, kit, "step-answered", { turnaround, step: "stow", answer: "seen" });
    pen.write(one.by, one.day, kit, "closed-grounded", { turnaround, reason: "Enough." });
  }
  return pen.lines;
}

const apart = fc
  .tuple(deeds, deeds)
  .map(([one, other]) => [...begun(), ...written("tablet", one), ...written("phone", other)]);

function bookOf(lines: readonly Entry[]) {
  const fold = createStationFold([SMALL_PATTERN]);
  fold.add(lines);
  return practiceOf(fold.read());
}

const read = (lines: readonly Entry[]) => {
  const book = bookOf(lines);
  return { doings: book.doings, held: PEOPLE.map((one) => book.holding("q", one)) };
};

const dayOf = (text: string) => Date.parse(text) / DAY;

/** The rule once more, asked backwards: does this count, by what was done before it? */
function counts(one: JudgedDoing, all: readonly JudgedDoing[]): boolean {
  if (one.in.kind === "told") return true;
  if (one.at < instant(10, 4)) return true;
  const before = all.slice(0, all.indexOf(one));
  const held = (who: string) =>
    before.some((old) => old.person === who && dayOf(one.day) - dayOf(old.day) <= EVERY && counts(old, all));
  return held(one.person) || (one.second !== undefined && one.second !== one.person && held(one.second));
}

describe("what two devices wrote of who did what", () => {
  it("reads the same in whatever order the lines arrive", () => {
    fc.assert(
      fc.property(apart, fc.infiniteStream(fc.nat()), (lines, keys) => {
        const mixed = shuffled(lines, keys);
        expect(read(mixed)).toEqual(read(lines));
      }),
    );
  });

  it("READY-17 counts what the rule counts when it is asked backwards", () => {
    fc.assert(
      fc.property(apart, (lines) => {
        const { doings } = read(lines);
        expect(doings.map((one) => one.counts !== undefined)).toEqual(doings.map((one) => counts(one, doings)));
      }),
    );
  });

  it("is held by nobody for whom nothing counts, and until so long after the last that does", () => {
    fc.assert(
      fc.property(apart, (lines) => {
        const { doings, held } = read(lines);
        for (const [at, who] of PEOPLE.entries()) {
          const days = doings.filter((one) => one.person === who && one.counts).map((one) => Date.parse(one.day));
          const until = days.length === 0 ? undefined : Math.max(...days) + EVERY * DAY;
          expect(held[at] && Date.parse(held[at].until)).toBe(until);
        }
      }),
    );
  });
});
