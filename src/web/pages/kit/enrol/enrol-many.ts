import { plainName, type Fault } from "#base";
import type { Words } from "#words";
import { enrolKit, type ActContext, type Draft } from "#station";

/** One kit of several that are enrolled on one page. */
export interface ManyRow {
  readonly name: string;
  readonly serial: string;
  readonly place: string;
  readonly seal: string;
}

/** Kits of one pattern being taken on charge together. Kept on the device until they are. */
export interface ManyDraft {
  readonly pattern: string;
  readonly rows: readonly ManyRow[];
}

export type ManyField = keyof ManyRow;

export const EMPTY_ROW: ManyRow = { name: "", serial: "", place: "", seal: "" };

/** Nothing filled in, with room for three. */
export const EMPTY_MANY: ManyDraft = { pattern: "", rows: [EMPTY_ROW, EMPTY_ROW, EMPTY_ROW] };

/** What is wrong, by row and field. */
export type ManyFaults = ReadonlyMap<number, Readonly<Partial<Record<ManyField, string>>>>;

const FIELD_OF: Readonly<Record<string, ManyField>> = {
  place: "place",
  "body.name": "name",
  "body.serial": "serial",
  "body.seal": "seal",
};

/** True for a row in which nothing was written: its place may have come from the row above. */
export function isBlank({ name, serial, seal }: ManyRow): boolean {
  return [name, serial, seal].every((text) => text.trim() === "");
}

/** All lines, or everything that speaks against them: none is written where one row is wrong. */
export function judgeMany(
  { pattern, rows }: ManyDraft,
  doing: ActContext,
  { newId, words }: { readonly newId: () => string; readonly words: Words["enrol"] },
): { readonly drafts: readonly Draft[]; readonly faults: ManyFaults; readonly other: readonly Fault[] } {
  const faults = new Map<number, Partial<Record<ManyField, string>>>();
  const say = (at: number, field: ManyField, said: string) =>
    void faults.set(at, { ...faults.get(at), [field]: faults.get(at)?.[field] ?? said });
  const other: Fault[] = [];
  const drafts = rows.flatMap((row, at): Draft[] => {
    if (isBlank(row)) return [];
    for (const field of ["name", "serial", "seal"] as const) {
      const twin = rows.findIndex((one) => isSame(one[field], row[field]));
      if (twin >= 0 && twin < at) say(at, field, words.rowHasIt({ row: twin + 1 }));
    }
    const act = enrolKit(doing, { kit: newId(), place: row.place, pattern, body: bodyOf(row) });
    if (act.kind === "entry") return [act.draft];
    for (const fault of act.because) {
      const field = FIELD_OF[fault.field];
      if (field) say(at, field, words.wanted({ allowed: fault.allowed, remedy: fault.remedy }));
      else if (!other.some(({ code }) => code === fault.code)) other.push(fault);
    }
    return [];
  });
  return { drafts: faults.size + other.length > 0 ? [] : drafts, faults, other };
}

/** What nobody read is not written: no date, no item. */
function bodyOf({ name, serial, seal }: ManyRow) {
  const read = seal.trim();
  return { name: name.trim(), serial: serial.trim(), ...(read !== "" && { seal: read }), items: [] };
}

function isSame(one: string, other: string): boolean {
  return plainName(one) !== "" && plainName(one) === plainName(other);
}
