import { dayIn, type UnitSystem } from "#base";
import type { Pattern } from "#kit";
import type { TurnaroundRecord } from "#paper";
import { type KitState, type Turnaround, standingInWords } from "#readiness";
import { linesBehind, standingAt, type Photo, type StationFold, type StationReading } from "#station";
import { ENGLISH } from "#words";
import { cardDelivery } from "./card-delivery.ts";
import { proveLines } from "../heads/record-lines.ts";
import type { Parts } from "../parts.ts";
import type { WholeLog } from "../log/whole-log.ts";

// The paper room is loaded when the first paper is printed: a start must not wait for its typesetting.

/** The record of a turnaround, open or closed, as a PDF; undefined where there is none of that id. */
export async function printTurnaround(
  parts: Parts,
  log: WholeLog,
  wanted: { readonly kit: string; readonly turnaround: string; readonly units: UnitSystem },
): Promise<Uint8Array | undefined> {
  const record = await gatherTurnaround(parts, await log.read(), wanted);
  if (record === undefined) return undefined;
  const { renderTurnaroundRecord } = await import("#paper");
  return renderTurnaroundRecord(record);
}

/** All that the record of a turnaround is printed from; undefined where there is none of that id, or no pattern of it. */
export async function gatherTurnaround(
  parts: Parts,
  fold: StationFold,
  wanted: { readonly kit: string; readonly turnaround: string; readonly units: UnitSystem },
): Promise<TurnaroundRecord | undefined> {
  const kit = fold.kit(wanted.kit);
  const turnaround = turnaroundsOf(kit).find(({ id }) => id === wanted.turnaround);
  const reading = fold.read();
  const pattern = kit && reading.patterns.get(kit.pattern);
  if (kit === undefined || turnaround === undefined || pattern === undefined) return undefined;
  const record = gather(parts, reading, { kit, turnaround, pattern });
  const behind = linesBehind(fold.allEntriesOf(`kit:${kit.id}`), turnaround.id);
  const proofs = await proveLines(parts, behind);
  const late = behind.flatMap((entry) => {
    const received = fold.receivedLate(entry.id);
    return received === undefined ? [] : [{ entry, received }];
  });
  const photos = await fetchPhotos(parts, kit, turnaround);
  const standing = new Set(fold.entriesOf(`kit:${kit.id}`).map(({ id }) => id));
  const entries = behind.filter(({ id }) => standing.has(id));
  return { ...record, units: wanted.units, photos, proofs, late, entries };
}

/** Closed ones, the open one, and any that another device opened beside it. */
function turnaroundsOf(kit: KitState | undefined): readonly Turnaround[] {
  return [...(kit?.turnarounds ?? []), ...(kit?.turnaround ? [kit.turnaround] : []), ...(kit?.otherTurnarounds ?? [])];
}

function gather(
  parts: Parts,
  reading: StationReading,
  about: { readonly kit: KitState; readonly turnaround: Turnaround; readonly pattern: Pattern },
): Omit<TurnaroundRecord, "units" | "photos" | "proofs" | "late" | "entries"> {
  const now = parts.ambient.now();
  const place = reading.places.find(({ id }) => id === about.kit.place);
  return {
    ...about,
    now,
    stationName: reading.stationName,
    placeName: place?.name ?? about.kit.place,
    standing: standingInWords(standingAt(about.kit, reading, dayIn(place?.zone ?? "UTC", now)), ENGLISH.standing),
    people: new Map(reading.people.map(({ id, name }) => [id, name])),
  };
}

/** Photos of the turnaround's answers and of its findings, those that have arrived. */
async function fetchPhotos(
  { store }: Parts,
  kit: KitState,
  turnaround: Turnaround,
): Promise<ReadonlyMap<string, Photo>> {
  const answers = Object.values(turnaround.answers).flatMap(({ photos }) => photos ?? []);
  const findings = kit.findings.filter((one) => one.turnaround === turnaround.id).flatMap(({ photos }) => photos);
  const hashes = new Set([...answers, ...findings].map(({ hash }) => hash));
  const found = await Promise.all([...hashes].map((hash) => store.photo(hash)));
  return new Map(found.flatMap((photo) => (photo === undefined ? [] : [[photo.hash, photo]])));
}

/** A pattern as a card to fill in, named for a kit where one is wanted, by "id@version", or by its id for the newest. */
export async function printCard(
  parts: Parts,
  log: WholeLog,
  wanted: { readonly pattern: string; readonly units: UnitSystem; readonly kit?: string | undefined },
): Promise<Uint8Array | undefined> {
  const versions = parts.patterns.filter(({ id, version }) => [id, `${id}@${version}`].includes(wanted.pattern));
  const pattern = versions.toSorted((one, other) => other.version - one.version)[0];
  if (pattern === undefined) return undefined;
  const stationName = parts.roster.stationName();
  const { renderPatternCard } = await import("#paper");
  const delivery = cardDelivery(pattern, wanted.units);
  const kit = wanted.kit === undefined ? undefined : (await log.read()).kit(wanted.kit);
  const named = kit && { kit: { name: kit.name, serial: kit.serial } };
  const card = { stationName, pattern, units: wanted.units, now: parts.ambient.now(), ...named };
  return renderPatternCard(delivery === undefined ? card : { ...card, delivery });
}
