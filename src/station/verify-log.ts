import { PlaceAudit, type AuditFault, type ChainHead, type Entry, type KeptHead } from "#log";
import { newestStoredReceipt } from "./clock/index.ts";
import { PhotoBook } from "./photo-book.ts";
import type { LogStore, StoredLog } from "./ports.ts";
import { readSigned, unsignedFault } from "./signed-heads.ts";

/** What became of one place: sound, or one verdict for each fault found. */
export interface PlaceVerdict {
  readonly place: string;
  readonly verdict:
    | {
        readonly kind: "sound";
        readonly count: number;
        readonly head: ChainHead;
        /** Photos that its lines name and that never came: not sent yet, or never. */
        readonly photosMissing: number;
      }
    | ({ readonly kind: "broken" } & AuditFault);
}

type Store = LogStore & StoredLog;

const PAGE = 5000;

/**
 * Holds the whole log against itself: every column of every line, the chain, the heads, the photos, the places that ever
 * were; and against heads that others keep.
 *
 * @param witnessed - heads kept elsewhere
 * @param signedSince - when this log was first signed, as it is kept beside the key; undefined where nothing says so
 */
export async function verifyLog(
  store: Store,
  witnessed: readonly KeptHead[],
  signedSince?: string,
): Promise<readonly PlaceVerdict[]> {
  const { kept, faults: own, isUnsigned } = await readSigned(store);
  const faults = isUnsigned ? [...own, ...unsignedFault(signedSince, await newestStoredReceipt(store))] : own;
  const heads = [...witnessed, ...kept];
  const seen = new Set(await store.placesSeen());
  const photos = await PhotoBook.of(store);
  const places = new Set([...(await store.storedPlaces()), ...heads.map(({ place }) => place)]);
  const verdicts = faults.map(({ place, ...fault }) => broken(place, fault));
  for (const place of [...places].sort()) {
    const ofPlace = heads.filter((head) => head.place === place);
    const audit = new PlaceAudit(place, ofPlace);
    const found = await verifyPlace(store, audit, { place, isKnown: seen.has(place), photos });
    const isSpoiled = faults.some((fault) => fault.place === place);
    verdicts.push(...(isSpoiled ? found.filter(({ verdict }) => verdict.kind === "broken") : found));
  }
  const apart = [...photos.unnamed(), ...(await faultsOfLives(store))];
  return [...verdicts, ...apart.map((because) => broken("", { seq: 0, because }))];
}

const VOUCHER_SECRET = /^[0-9a-f]{64}$/;

/** Without its lives and the key of its vouchers a station can answer for nothing that it told devices. */
async function faultsOfLives(store: Store): Promise<readonly string[]> {
  const { epochs, secrets } = await store.storedLives();
  const noLife = epochs.length === 0 ? ["the database says of no life of its own, and it began with one"] : [];
  const isKey = secrets.length === 1 && VOUCHER_SECRET.test(secrets[0]!);
  return [...noLife, ...(isKey ? [] : ["the key of the station's vouchers is gone, or is no key of 32 bytes"])];
}

interface About {
  readonly place: string;
  readonly isKnown: boolean;
  readonly photos: PhotoBook;
}

/** Reads on until the head, read after the lines, is at the last of them: the station may be at work meanwhile. */
async function verifyPlace(store: Store, audit: PlaceAudit, about: About): Promise<PlaceVerdict[]> {
  const { place, isKnown, photos } = about;
  const wrong: AuditFault[] = [];
  let missing = 0;
  for (let isFirst = true; ; isFirst = false) {
    const before = audit.head.seq;
    for await (const line of linesAfter(store, place, isFirst ? undefined : before)) {
      const found = photos.named(namesOf(audit.see(line)));
      missing += found.missing;
      wrong.push(...found.wrong.map((because) => ({ seq: line.seq, because })));
    }
    const stored = await store.storedHead(place);
    if ((stored?.seq ?? 0) > audit.head.seq && audit.head.seq > before) continue;
    const faults = [...audit.finish(stored, isKnown), ...wrong];
    if (faults.length > 0) return faults.map((fault) => broken(place, fault));
    return [{ place, verdict: { kind: "sound", count: audit.count, head: audit.head, photosMissing: missing } }];
  }
}

async function* linesAfter(store: Store, place: string, after: number | undefined) {
  for (let last = after; ;) {
    const page = await store.storedLines(place, last, PAGE);
    yield* page;
    if (page.length < PAGE) return;
    last = page.at(-1)!.seq;
  }
}

function namesOf(entry: Entry | undefined): string[] {
  const { photos } = (entry?.body ?? {}) as { photos?: readonly ({ readonly hash?: unknown } | null)[] };
  return (Array.isArray(photos) ? photos : []).flatMap((one) => (typeof one?.hash === "string" ? [one.hash] : []));
}

function broken(place: string, fault: AuditFault): PlaceVerdict {
  return { place, verdict: { kind: "broken", ...fault } };
}
