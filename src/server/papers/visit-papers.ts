import { addDays, type UnitSystem } from "#base";
import type { Entry } from "#log";
import type { TurnaroundRecord } from "#paper";
import { leftOutOf, paretoOf, visitResult, type StationFold, type VisitResult } from "#station";
import { proveLines } from "../heads/record-lines.ts";
import { gatherTurnaround } from "./papers.ts";
import type { WholeLog } from "../log/whole-log.ts";
import type { Parts } from "../parts.ts";

const YEAR = 365;

/** The report of a visit, as a PDF; undefined for none of that id, and for one that is on: it tells what the keeper wrote. */
export async function printVisit(
  parts: Parts,
  log: WholeLog,
  { id, units }: { readonly id: string; readonly units: UnitSystem },
): Promise<Uint8Array | undefined> {
  const fold = await log.read();
  const reading = fold.read();
  const visit = reading.visits.find((one) => one.id === id);
  if (visit?.ended === undefined) return undefined;
  const result = visitResult(visit, reading);
  const to = visit.ended.at.slice(0, 10);
  const span = { from: addDays(to, -YEAR), to };
  const { renderVisitReport } = await import("#paper");
  return renderVisitReport({
    stationName: reading.stationName,
    placeNames: visit.begun.places.map((place) => reading.places.find((one) => one.id === place)?.name ?? place),
    visit,
    result,
    people: new Map(reading.people.map((person) => [person.id, person.name])),
    pareto: {
      items: paretoOf(reading, "item", span),
      modes: paretoOf(reading, "mode", span),
      leftOut: leftOutOf(reading, span),
    },
    records: await recordsOf(parts, fold, result, units),
    proofs: await proveLines(parts, [...fold.allEntriesOf(`visit:${id}`), ...keptBehind(fold, result)]),
    now: parts.ambient.now(),
  });
}

async function recordsOf(parts: Parts, fold: StationFold, { kits }: VisitResult, units: UnitSystem) {
  const records: TurnaroundRecord[] = [];
  for (const { id: kit, turnaround } of kits) {
    const record = await gatherTurnaround(parts, fold, { kit, turnaround, units });
    if (record !== undefined) records.push(record);
  }
  return records;
}

/** Of each kit the opening and closing it is compared with, the lines compared, and what was raised. */
function keptBehind(fold: StationFold, { kits }: VisitResult): readonly Entry[] {
  return kits.flatMap(({ id, kit, turnaround, lines }) => {
    const compared = kit?.turnarounds.find((one) => one.id === turnaround);
    const marks = [
      compared?.opened,
      compared?.closed,
      ...lines.flatMap(({ wrote, finding }) => [wrote?.mark, finding?.raised]),
    ];
    const wanted = new Set(marks.flatMap((mark) => (mark ? [mark.entry] : [])));
    return fold.allEntriesOf(`kit:${id}`).filter((entry) => wanted.has(entry.id));
  });
}
