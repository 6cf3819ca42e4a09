import type { UnitSystem } from "#base";
import type { Entry } from "#log";
import type { CasualtyTimeline } from "#paper";
import { kitsOfCasualty, type Bodies, type CasualtyState } from "#readiness";
import type { StationFold } from "#station";
import type { Parts } from "./parts.ts";
import type { WholeLog } from "./whole-log.ts";

/** The timeline of a casualty as a PDF; undefined where there is none of that id. */
export async function printCasualty(
  parts: Parts,
  log: WholeLog,
  wanted: { readonly casualty: string; readonly units: UnitSystem },
): Promise<Uint8Array | undefined> {
  const fold = await log.read();
  const reading = fold.read();
  const casualty = reading.casualties.find(({ id }) => id === wanted.casualty);
  if (casualty === undefined) return undefined;
  const { renderCasualtyTimeline } = await import("#paper");
  return renderCasualtyTimeline({
    stationName: reading.stationName,
    casualty,
    lines: linesOf(fold, casualty),
    kits: kitsOn(fold, casualty),
    people: new Map(reading.people.map(({ id, name }) => [id, name])),
    units: wanted.units,
    now: parts.ambient.now(),
  });
}

function linesOf(fold: StationFold, { id }: CasualtyState): CasualtyTimeline["lines"] {
  const subject = `casualty:${id}`;
  return fold.allEntriesOf(subject).map((entry) => {
    const strike = fold.struckBy(subject, entry.id);
    return { entry, ...(strike && { struck: (strike.body as Bodies["struck"]).reason }) };
  });
}

/** Kits that were on her, by the rule for hand-overs; a kit taken off the station's books is told by its id. */
function kitsOn(fold: StationFold, casualty: CasualtyState): CasualtyTimeline["kits"] {
  const { kits } = fold.read();
  const names = new Map(kits.map(({ id, name }) => [id, name]));
  const handOvers = kits.flatMap(({ id }) =>
    fold
      .entriesOf(`kit:${id}`)
      .filter(isHandOver)
      .map(({ at, by, body }) => ({ kit: id, at, by, ...body })),
  );
  return kitsOfCasualty(casualty, handOvers).map(({ kit, handed }) => ({
    name: names.get(kit) ?? kit,
    ...(handed && { handed }),
  }));
}

function isHandOver(entry: Entry): entry is Entry<"handed-over", Bodies["handed-over"]> {
  return entry.kind === "handed-over";
}

/** The card for strangers as a PDF. */
export async function printReadDoCard(parts: Parts): Promise<Uint8Array> {
  const { renderReadDoCard } = await import("#paper");
  return renderReadDoCard({ stationName: parts.roster.stationName(), now: parts.ambient.now() });
}
