import { headLine, judgeHead, readHead, trustedKeys, type SignedHead } from "#log";
import { isInputError } from "#base";
import type { HeadsReply } from "#station";
import type { DeviceStore } from "../held/device-store.ts";
import type { ServerDoor } from "../sync/server-door.ts";
import { readWitness, WITNESS, type Doubt, type WitnessNote } from "./witness-note.ts";

/**
 * This device as a witness of the station's log: it keeps the newest signed head of each place, and asks for the proof
 * that what is shown later begins with it. A station that shows another history is told, and the head kept stays.
 */
export class HeadWitness {
  readonly #door: Pick<ServerDoor, "ask">;
  readonly #store: DeviceStore;
  readonly #now: () => string;

  constructor(door: Pick<ServerDoor, "ask">, store: DeviceStore, now: () => string) {
    this.#door = door;
    this.#store = store;
    this.#now = now;
  }

  /**
   * Looks at what the station shows now. Without an answer nothing changes.
   *
   * @param isMending - this device is bringing back what a station that was put back lacks: a doubt found now passes
   *   where the mended log goes on from what was seen
   */
  async look(isMending = false): Promise<readonly Doubt[]> {
    const kept = await this.#kept();
    const seen = Object.fromEntries(Object.values(kept.heads).map(({ place, number }) => [place, number]));
    const path = `/api/log/heads?seen=${encodeURIComponent(JSON.stringify(seen))}`;
    const reply = await this.#door.ask<HeadsReply>({ method: "GET", path });
    if (reply.kind !== "answered") return kept.doubts;
    const next = holdAgainst(kept, reply.value, { found: this.#now(), isMending });
    await this.#store.putNote(WITNESS, next);
    return next.doubts;
  }

  async doubts(): Promise<readonly Doubt[]> {
    return (await this.#kept()).doubts;
  }

  /** A person has taken note of the doubts: they stay written here, and what the station shows next is the new beginning. */
  async takeNote(): Promise<void> {
    const { heads, doubts, noted, keys } = await this.#kept();
    const doubted = new Set(doubts.map(({ place }) => place));
    const rest = Object.fromEntries(Object.entries(heads).filter(([place]) => !doubted.has(place)));
    const isKeyInDoubt = doubts.some(({ kind }) => kind === "not-signed");
    await this.#store.putNote(WITNESS, {
      heads: rest,
      keys: isKeyInDoubt ? [] : keys,
      doubts: [],
      noted: [...noted, ...doubts],
    } satisfies WitnessNote);
  }

  /** The heads kept, and those of doubts, as a file for `drykeel verify --witness`. */
  async file(): Promise<string> {
    const { heads, doubts, noted } = await this.#kept();
    const remarks = [...noted, ...doubts].map(({ found, because }) => `# ${found}: ${because}`);
    const seen = [...noted, ...doubts].flatMap((doubt) => doubt.seen ?? []);
    return [...remarks, ...[...Object.values(heads), ...seen].map(headLine), ""].join("\n");
  }

  #kept(): Promise<WitnessNote> {
    return readWitness(this.#store);
  }
}

interface Looked {
  readonly found: string;
  readonly isMending: boolean;
}

function holdAgainst(kept: WitnessNote, reply: HeadsReply, { found, isMending }: Looked): WitnessNote {
  const isFirst = kept.keys.length === 0;
  const trusted = trustedKeys(isFirst ? reply.keys.map(({ key }) => key) : kept.keys, reply.keys);
  const heads = { ...kept.heads };
  const firm = kept.doubts.filter(({ isPassing }) => isPassing !== true);
  const doubts = new Map(firm.map((doubt) => [doubt.place, doubt]));
  const doubt = (more: Omit<Doubt, "found">) =>
    doubts.has(more.place) || doubts.set(more.place, { ...more, found, ...(isMending && { isPassing: true }) });
  for (const place of Object.keys(heads)) {
    if (reply.heads.some(({ head }) => head.place === place)) continue;
    doubt({ place, kind: "cut-off", because: missing(place, heads[place]!, reply), seen: heads[place]! });
  }
  for (const one of reply.heads) {
    const shown = readable(one.head);
    const seen = heads[one.head.place];
    const place = one.head.place;
    const verdict = shown === undefined ? UNREADABLE : judgeHead(seen, shown, one.proof, trusted);
    if (verdict.kind === "goes-on") heads[place] = shown!;
    else doubt({ place, ...verdict, ...(seen && { seen }), ...(shown && { shown }) });
  }
  return { heads, keys: [...trusted], doubts: [...doubts.values()], noted: kept.noted };
}

const UNREADABLE = { kind: "not-signed", because: "the head shown is not signed by the key it names" } as const;

function missing(place: string, { number, at }: SignedHead, { heads }: HeadsReply): string {
  const what = heads.length === 0 ? "the station shows no signed head any more" : `${place} is not shown any more`;
  return `${what}; line ${number} of ${place} was signed ${at}`;
}

function readable(head: unknown): SignedHead | undefined {
  try {
    return readHead(head);
  } catch (cause) {
    if (isInputError(cause)) return undefined;
    throw cause;
  }
}
