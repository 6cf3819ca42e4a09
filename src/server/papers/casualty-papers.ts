import type { UnitSystem } from "#base";
import { patternKey, type CardLanguage, type Pattern } from "#kit";
import type { Entry } from "#log";
import type { CasualtyTimeline } from "#paper";
import { isSheetOf, kitsOfCasualty, type Bodies, type CasualtyState } from "#readiness";
import type { StationFold } from "#station";
import { saidUpon } from "../timeline/said-upon.ts";
import type { QuestionDesk } from "../questions/question-desk.ts";
import type { Parts } from "../parts.ts";
import type { WholeLog } from "../log/whole-log.ts";

/** The timeline of a casualty as a PDF; undefined where there is none of that id. */
export async function printCasualty(
  parts: Parts,
  { log, desk }: { readonly log: WholeLog; readonly desk: QuestionDesk },
  wanted: { readonly casualty: string; readonly units: UnitSystem; readonly asker: string },
): Promise<Uint8Array | undefined> {
  const fold = await log.read();
  const reading = fold.read();
  const casualty = reading.casualties.find((one) => isSheetOf(one, wanted.casualty));
  if (casualty === undefined) return undefined;
  const { renderCasualtyTimeline } = await import("#paper");
  return renderCasualtyTimeline({
    stationName: reading.stationName,
    casualty,
    lines: linesOf(fold, casualty),
    kits: kitsOn(fold, casualty),
    said: await saidUpon(fold.allEntriesOf(`casualty:${casualty.id}`), desk, wanted.asker),
    people: new Map(reading.people.map(({ id, name }) => [id, name])),
    units: wanted.units,
    now: parts.ambient.now(),
  });
}

function linesOf(fold: StationFold, { id }: CasualtyState): CasualtyTimeline["lines"] {
  const subject = `casualty:${id}`;
  return fold.allEntriesOf(subject).map((entry) => {
    const strike = fold.struckBy(subject, entry.id);
    const received = fold.receivedLate(entry.id);
    const struck = strike && { struck: (strike.body as Bodies["struck"]).reason };
    return { entry, ...struck, ...(received !== undefined && { received }) };
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

/** What a card is wanted for; the first pattern that has one where none is named. */
export interface WantedCard {
  /** "id@version", or an id for the newest. */
  readonly pattern?: string | undefined;
  readonly language: CardLanguage;
  readonly second?: CardLanguage | undefined;
  readonly kit?: string | undefined;
  readonly channel?: string | undefined;
}

/** The card for strangers as a PDF; undefined where no such pattern has one that fits on a page. */
export async function printReadDoCard(parts: Parts, wanted: WantedCard): Promise<Uint8Array | undefined> {
  const { language, second, kit, channel } = wanted;
  const isWanted = (one: Pattern) => [undefined, one.id, patternKey(one)].includes(wanted.pattern);
  const withCard = parts.patterns.filter((one) => one.stranger !== undefined && isWanted(one));
  const pattern = withCard.toSorted((one, other) => other.version - one.version)[0];
  if (pattern === undefined) return undefined;
  const { renderReadDoCard } = await import("#paper");
  return renderReadDoCard({
    stationName: parts.roster.stationName(),
    now: parts.ambient.now(),
    pattern,
    languages: second === undefined || second === language ? [language] : [language, second],
    ...(kit !== undefined && { kit }),
    ...(channel !== undefined && { channel }),
  });
}
