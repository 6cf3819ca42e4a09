import { createHash } from "node:crypto";
import Database from "better-sqlite3";
import { Client } from "pg";

interface Row {
  readonly place: string;
  readonly seq: number;
  readonly id: string;
  readonly hash: string;
  readonly received: string;
  readonly entry: string;
}

/** What is kept: faults in words, and the lines by id. */
export interface Kept {
  readonly faults: readonly string[];
  readonly lines: ReadonlyMap<string, string>;
}

/** What is on the disk, read and recomputed without any of the program. */
export function readKept(database: string): Kept {
  const raw = new Database(database, { readonly: true });
  try {
    const integrity = String(raw.pragma("integrity_check", { simple: true }));
    const rows = raw.prepare("select * from log_entries order by place, seq").all() as Row[];
    const faults = integrity === "ok" ? [] : [`the database says: ${integrity}`];
    const { faults: broken, lines } = keptIn(rows);
    return { faults: [...faults, ...broken], lines };
  } finally {
    raw.close();
  }
}

/** The same of a PostgreSQL database. */
export async function readKeptPostgres(url: string): Promise<Kept> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    const { rows } = await client.query<Row>('select * from log_entries order by place collate "C", seq');
    return keptIn(rows);
  } finally {
    await client.end();
  }
}

function keptIn(rows: readonly Row[]): Kept {
  return { faults: judgeChains(rows), lines: new Map(rows.map(({ id, entry }) => [id, entry])) };
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
