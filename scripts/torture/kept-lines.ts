import { createHash } from "node:crypto";
import Database from "better-sqlite3";

interface Row {
  readonly place: string;
  readonly seq: number;
  readonly id: string;
  readonly hash: string;
  readonly received: string;
  readonly entry: string;
}

/** What is on the disk, read and recomputed without any of the program: faults in words, and the lines by id. */
export function readKept(database: string): {
  readonly faults: readonly string[];
  readonly lines: ReadonlyMap<string, string>;
} {
  const raw = new Database(database, { readonly: true });
  try {
    const integrity = String(raw.pragma("integrity_check", { simple: true }));
    const rows = raw.prepare("select * from log_entries order by place, seq").all() as Row[];
    const faults = integrity === "ok" ? [] : [`the database says: ${integrity}`];
    return { faults: [...faults, ...judgeChains(rows)], lines: new Map(rows.map(({ id, entry }) => [id, entry])) };
  } finally {
    raw.close();
  }
}

/** As docs/methods/log.md says: SHA-256 of the hash before, the time of receipt and the canonical text, LF between. */
function judgeChains(rows: readonly Row[]): string[] {
  const ends = new Map<string, { seq: number; hash: string }>();
  return rows.flatMap(({ place, seq, hash, received, entry, id }) => {
    const end = ends.get(place) ?? { seq: 0, hash: sha256(`drykeel log 1\n${place}`) };
    ends.set(place, { seq, hash });
    const isNext = seq === end.seq + 1 && hash === sha256(`${end.hash}\n${received}\n${entry}`);
    return isNext ? [] : [`line ${seq} of ${place} (${id}) does not follow on the one before`];
  });
}

function sha256(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}
