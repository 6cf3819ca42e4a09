import { dayIn } from "#base";
import type { Entry } from "#log";
import { type Bodies, standingInWords } from "#readiness";
import { standingAt } from "#station";
import { ENGLISH } from "#words";
import type { Parts } from "../parts.ts";
import type { WholeLog } from "../log/whole-log.ts";

/** The receipt for a kit that was handed over, as a PDF; undefined where no line of that id says that one was. */
export async function printReceipt(parts: Parts, log: WholeLog, id: string): Promise<Uint8Array | undefined> {
  const entry = (await parts.store.find(id))?.entry;
  if (entry === undefined || !isHandOver(entry)) return undefined;
  const fold = await log.read();
  const kit = fold.kit(entry.subject.slice("kit:".length));
  const reading = fold.read();
  const pattern = kit && reading.patterns.get(kit.pattern);
  const stands = kit && fold.entriesOf(entry.subject).some((one) => one.id === id);
  if (kit === undefined || pattern === undefined || !stands) return undefined;
  const place = reading.places.find((one) => one.id === kit.place);
  const { renderReceipt } = await import("#paper");
  return renderReceipt({
    stationName: reading.stationName,
    kit,
    pattern,
    placeName: place?.name ?? kit.place,
    standing: standingInWords(
      standingAt({ ...kit, custody: { kind: "here" } }, reading, dayIn(place?.zone ?? "UTC", entry.at)),
      ENGLISH.standing,
    ),
    handedBy: reading.people.find((one) => one.id === entry.by)?.name ?? entry.by,
    at: entry.at,
    handOver: entry.body,
    now: parts.ambient.now(),
  });
}

function isHandOver(entry: Entry): entry is Entry<"handed-over", Bodies["handed-over"]> {
  return entry.kind === "handed-over";
}
