import type { UnitSystem } from "#base";
import type { CasualtyTimeline } from "#paper";
import type { Bodies, CasualtyState } from "#readiness";
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
    kits: kitsGone(fold, casualty),
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

/** Kits handed over to her: those that pumped on her, and any that went to a vessel of her name since. */
function kitsGone(fold: StationFold, casualty: CasualtyState): CasualtyTimeline["kits"] {
  return fold.read().kits.flatMap(({ id, name }) =>
    fold.entriesOf(`kit:${id}`).flatMap((entry) => {
      const body = entry.body as Bodies["handed-over"];
      const isHers = entry.kind === "handed-over" && body.to === casualty.name;
      return isHers && Date.parse(entry.at) >= Date.parse(casualty.opened.at)
        ? [{ name, at: entry.at, method: body.method }]
        : [];
    }),
  );
}

/** The card for strangers as a PDF. */
export async function printReadDoCard(parts: Parts): Promise<Uint8Array> {
  const { renderReadDoCard } = await import("#paper");
  return renderReadDoCard({ stationName: parts.roster.stationName(), now: parts.ambient.now() });
}
