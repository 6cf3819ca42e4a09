import { instantOf } from "#log";
import { isOfDrill, type Finding, type KitState } from "#readiness";
import { ENGLISH, inWords } from "#words";
import { boardOf, type Board, type BoardPlace } from "../board.ts";
import type { StationReading } from "../station-reading.ts";
import type { Letter, MailWish } from "./mail-shelf.ts";
import { weeklyLetter } from "./weekly-letter.ts";

/** Findings are told of for so long [s] after they were raised: an old one is no news. */
const NEWS_SECONDS = 7 * 86_400;

const FOOT = "\n\nWhat you are told, and where, is under Settings, Mail.\n";

/** Places that hold fewer ready kits than they must, by id. */
export function placesShort(reading: StationReading, now: string): readonly string[] {
  return boardOf(reading, now)
    .places.filter(({ strength }) => strength.short > 0)
    .map(({ place }) => place.id);
}

/**
 * Letters that there are reasons for now, whether they were written before or not: the same reason gives the same id.
 *
 * @param reading - the station as its log tells it
 * @param wishes - of people; of those who left none are read
 * @param now - RFC 3339
 * @param shortSince - when each place that falls short now began to, by id
 */
export function lettersDue(
  reading: StationReading,
  wishes: readonly MailWish[],
  now: string,
  shortSince: ReadonlyMap<string, string>,
): readonly Letter[] {
  const here = new Set(reading.people.filter(({ left }) => !left).map(({ id }) => id));
  const board = boardOf(reading, now);
  return wishes
    .filter(({ person }) => here.has(person))
    .flatMap((wish) => [
      ...(wish.isForShort ? shortLetters(reading, board, wish, shortSince) : []),
      ...(wish.isForGrounds ? groundingLetters(reading, wish, now) : []),
      ...weeklyLetter(reading, wish, now),
    ])
    .map((letter) => ({ ...letter, text: `${letter.text}${FOOT}` }));
}

/** To show a person that mail arrives, when they ask for it. */
export function trialLetter(reading: StationReading, wish: MailWish, id: string): Letter {
  const subject = `${reading.stationName}: a trial`;
  const text = "Mail from your station arrives here. You asked for this one yourself.";
  return { id: `trial:${id}`, person: wish.person, address: wish.address, subject, text: `${text}${FOOT}` };
}

function shortLetters(
  { stationName }: StationReading,
  board: Board,
  { person, address }: MailWish,
  since: ReadonlyMap<string, string>,
): readonly Letter[] {
  return board.places.flatMap((one) => {
    const begun = since.get(one.place.id);
    if (begun === undefined || one.strength.short === 0) return [];
    const { must, holds } = one.strength;
    const subject = `${stationName}: ${one.place.name} holds ${holds} of ${must} ready kits`;
    return [{ id: `short:${one.place.id}:${begun}:${person}`, person, address, subject, text: shortText(one) }];
  });
}

function shortText({ place, strength, kits }: BoardPlace): string {
  const why = kits
    .filter(({ standing: { standing } }) => standing !== "ready" && standing !== "ready-with-limits")
    .map(
      ({ kit, standing }) =>
        `- ${kit.name}: ${standing.because.map(({ said }) => inWords(said, ENGLISH.standing)).join("; ")}`,
    );
  const head = `${place.name} must hold ${strength.must} ready kits and holds ${strength.holds}.`;
  return [head, ...(why.length > 0 ? ["", "Not ready:", ...why] : [])].join("\n");
}

/** What was planted for a drill grounds nothing that anybody has to be called for. */
function groundingLetters(
  reading: StationReading,
  { person, address, since }: MailWish,
  now: string,
): readonly Letter[] {
  const isNews = ({ at }: { readonly at: string }): boolean =>
    instantOf(at) >= instantOf(since) && instantOf(now) - instantOf(at) <= NEWS_SECONDS * 1000;
  return reading.kits
    .filter(({ retired }) => !retired)
    .flatMap((kit) =>
      kit.findings
        .filter((one) => one.effect === "grounds" && !one.closed && !isOfDrill(one, kit) && isNews(one.raised))
        .map((finding) => {
          const subject = `${reading.stationName}: a finding grounds ${kit.name}`;
          return {
            id: `grounds:${finding.id}:${person}`,
            person,
            address,
            subject,
            text: textOf(reading, kit, finding),
          };
        }),
    );
}

function textOf(
  { patterns, people, places }: StationReading,
  kit: KitState,
  { item, mode, raised, note }: Finding,
): string {
  const pattern = patterns.get(kit.pattern);
  const found = pattern?.modes.find((one) => one.item === item && one.id === mode)?.name ?? mode;
  const on = pattern?.items.find(({ id }) => id === item)?.name ?? item;
  const who = people.find(({ id }) => id === raised.by)?.name ?? "somebody";
  const where = places.find(({ id }) => id === kit.place)?.name;
  const said = note === undefined ? "" : `\nThey wrote: ${note}`;
  return `${kit.name}${where === undefined ? "" : `, ${where}`}\n${on}: ${found}.\nFound by ${who}, ${raised.at}.${said}`;
}
