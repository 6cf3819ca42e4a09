import { emptyChain, type ChainHead, type Entry, type KeptEntry } from "#log";
import type { Cursor } from "#station";
import { COMMON_LIMIT } from "#station";
import type { AsideRow, BranchRow, DeviceDatabase, KeptRow } from "./device-database.ts";
import { Dexie } from "dexie";

/** Key of the note that says how far the station's log was read. */
export const CURSOR = "store:cursor";

/** Lines set aside, and what is known of the branch they stood on. */
export interface Branch extends BranchRow {
  readonly branch: number;
  readonly lines: readonly AsideRow[];
}

/** A line that this device holds and the station does not. */
export interface LostLine {
  readonly entry: Entry;
  /**
   * `offered`: it goes back by itself; `unvouched`: only by its writer's hand or an administrator's word; `clashing`: the
   * station has another line under its id.
   */
  readonly why: "offered" | "unvouched" | "clashing";
}

/**
 * Lines that this device pulled and the station does not have any more: its database was put back to an earlier copy.
 * They stand beside the log as it is now, count as ever, and stay until each of them has been pulled again.
 */
export class BranchShelf {
  readonly #db: DeviceDatabase;
  readonly #guard: <T>(work: () => Promise<T>) => Promise<T>;

  constructor(db: DeviceDatabase, guard: <T>(work: () => Promise<T>) => Promise<T>) {
    this.#db = db;
    this.#guard = guard;
  }

  /** Heads of a place as it is held here, from its end back in steps that double, to find where the station parts. */
  locate(place: string): Promise<readonly ChainHead[]> {
    return this.#guard(async () => {
      const end = (await this.#db.chains.get(place))?.seq ?? 0;
      const keys = stepsBack(end).map((seq) => [place, seq]);
      const ids = await this.#db.kept.where("[place+seq]").anyOf(keys).primaryKeys();
      const rows = await this.#db.kept.bulkGet(ids);
      return rows.flatMap((row) => (row === undefined ? [] : [{ seq: row.seq, hash: row.hash }]));
    });
  }

  /**
   * Takes everything beyond the last line in common out of the log, onto a branch of its own.
   *
   * @param common - by place, the last number that the station has too; 0 for none
   * @returns how many lines were set aside
   */
  setAside(common: Cursor): Promise<number> {
    const { kept, chains, aside, branches, notes } = this.#db;
    const tables = [kept, chains, aside, branches, notes];
    return this.#guard(() =>
      this.#db.transaction("rw", tables, async () => {
        let count = 0;
        for (const [place, seq] of Object.entries(common)) count += await this.#cut(place, seq);
        return count;
      }),
    );
  }

  /** Every branch that has lines not yet pulled again. */
  branches(): Promise<readonly Branch[]> {
    return this.#guard(async () => {
      const rows = await this.#db.branches.toArray();
      return Promise.all(rows.map(async (row) => ({ ...row, lines: await this.#linesOf(row.branch) })));
    });
  }

  /** True where any branch is left. */
  isOpen(): Promise<boolean> {
    return this.#guard(async () => (await this.#db.branches.count()) > 0);
  }

  /** Lines set aside that the station does not have as far as it was pulled, each once. */
  lost(): Promise<readonly LostLine[]> {
    return this.#guard(async () => {
      const rows = await this.#db.aside.toArray();
      if (rows.length === 0) return [];
      const held = await this.#db.kept.bulkGet(rows.map(({ id }) => id));
      const branches = new Map((await this.#db.branches.toArray()).map((row) => [row.branch, row]));
      const out = rows.filter((_, at) => held[at] === undefined);
      const lines = out.map(({ id, branch, kept, clashing }): [string, LostLine] => {
        const isUnvouched = branches.get(branch)?.unvouched ?? false;
        return [id, { entry: kept.entry, why: clashing === true ? "clashing" : isUnvouched ? "unvouched" : "offered" }];
      });
      return [...new Map(lines).values()];
    });
  }

  /** Notes how far a branch was offered, or that the station would not take it unvouched. */
  async note(branch: number, change: Partial<Pick<BranchRow, "next" | "proved" | "unvouched">>): Promise<void> {
    await this.#guard(() => this.#db.branches.update(branch, change));
  }

  /** Lines whose ids the station holds with other content: there is nothing more to be done about them. */
  async noteClashing(branch: number, ids: readonly string[]): Promise<void> {
    const clashing = new Set(ids);
    await this.#guard(() =>
      this.#db.aside.where({ branch }).modify((row) => {
        if (clashing.has(row.id)) row.clashing = true;
      }),
    );
  }

  /** Lines that leave a branch otherwise than by being pulled again: their writer sends them anew. */
  async remove(branch: number, ids: readonly string[]): Promise<void> {
    const { aside } = this.#db;
    const gone = new Set(ids);
    await this.#guard(() =>
      this.#db.transaction("rw", aside, async () => {
        const rows = await this.#linesOf(branch);
        await aside.bulkDelete(keysOf(rows.filter((row) => gone.has(row.id))));
      }),
    );
  }

  /**
   * After the whole log was pulled: lets go of branches of which every line is in it again, and readies those for another
   * offer that were offered whole and are not.
   */
  settle(): Promise<void> {
    const { kept, aside, branches } = this.#db;
    return this.#guard(() =>
      this.#db.transaction("rw", [kept, aside, branches], async () => {
        for (const row of await branches.toArray()) await this.#settleBranch(row);
      }),
    );
  }

  async #settleBranch(row: BranchRow & { readonly branch: number }): Promise<void> {
    const lines = await this.#linesOf(row.branch);
    const held = await this.#db.kept.bulkGet(lines.map(({ id }) => id));
    const out = lines.filter((line, at) => held[at] === undefined && line.clashing !== true);
    const clashing = lines.filter((line) => line.clashing === true);
    if (out.length === 0) await this.#db.aside.bulkDelete(keysOf(lines.filter((line) => !clashing.includes(line))));
    if (out.length === 0 && clashing.length === 0) await this.#db.branches.delete(row.branch);
    const isOfferedWhole = row.next.seq <= row.common.seq && (row.proved ?? []).length === 0;
    if (out.length > 0 && isOfferedWhole && !row.unvouched)
      await this.#db.branches.update(row.branch, { next: row.end });
    if (out.length > 0 && row.unvouched) {
      await this.#db.aside.bulkDelete(keysOf(lines.filter((_, at) => held[at] !== undefined)));
    }
  }

  async #cut(place: string, seq: number): Promise<number> {
    const { kept, chains, aside, branches, notes } = this.#db;
    const end = await chains.get(place);
    if (end === undefined || end.seq <= seq) return 0;
    const rows = await kept
      .where("[place+seq]")
      .between([place, seq + 1], [place, Dexie.maxKey])
      .toArray();
    const common = await this.#headAt(place, seq);
    const head = { seq: end.seq, hash: end.hash, ...(end.voucher !== undefined && { voucher: end.voucher }) };
    const branch = await branches.add({ place, common, end: head, next: head, unvouched: head.voucher === undefined });
    await aside.bulkPut(rows.map((row) => ({ branch, seq: row.seq, id: row.id, kept: bare(row) })));
    await kept.bulkDelete(rows.map(({ id }) => id));
    await (seq === 0 ? chains.delete(place) : chains.put({ place, ...common }));
    const { [place]: _, ...cursor } = ((await notes.get(CURSOR))?.value ?? {}) as Record<string, number>;
    await notes.put({ key: CURSOR, value: seq === 0 ? cursor : { ...cursor, [place]: seq } });
    return rows.length;
  }

  async #headAt(place: string, seq: number): Promise<ChainHead> {
    const row = await this.#db.kept.where("[place+seq]").equals([place, seq]).first();
    return row === undefined ? emptyChain(place) : { seq: row.seq, hash: row.hash };
  }

  #linesOf(branch: number): Promise<AsideRow[]> {
    return this.#db.aside.where({ branch }).sortBy("seq");
  }
}

function keysOf(rows: readonly AsideRow[]): [number, number][] {
  return rows.map(({ branch, seq }) => [branch, seq]);
}

function bare({ place: _place, id: _id, ...kept }: KeptRow): KeptEntry {
  return kept;
}

/** 40, 39, 37, 33, 25, 9: few, and as fine near the end as the last hours' lines need. */
function stepsBack(end: number): readonly number[] {
  const found: number[] = [];
  for (let step = 1, seq = end; seq >= 1 && found.length < COMMON_LIMIT; seq -= step, step *= 2) found.push(seq);
  return found;
}
