import { addDays } from "#base";
import { type Words, inWords } from "#words";
import { shortfallsOf, type Band, type DayRange, type KitState, type Shortfall } from "#readiness";
import type { StationView } from "../device/sync/contract.ts";
import type { BandPiece, BandRow } from "../drawing/index.ts";
import { sayStanding } from "../parts/standing-mark.tsx";
import { sayDate } from "../parts/words/say-time.ts";
import { allLines, type PlaceLines } from "./board-lines.ts";
import type { BandShelf } from "./band-shelf.ts";

type Bands = ReadonlyMap<string, readonly Band[]>;

/** What the bands say, and the standings. */
export interface AheadWords {
  readonly bands: Words["bands"];
  readonly parts: Words["parts"];
  readonly standing: Words["standing"];
}

/** A place over the days ahead: what each kit is worth, and when strength falls short. */
export interface PlaceAhead {
  readonly lines: PlaceLines;
  readonly bands: Bands;
  readonly shortfalls: readonly Shortfall[];
}

/** Today and the 364 days after it. */
export function yearFrom(today: string): DayRange {
  return { from: today, to: addDays(today, 364) };
}

/** The year ahead of some places if nobody does anything. A kit whose pattern is not here has no bands. */
export function placesAhead(places: readonly PlaceLines[], view: StationView, shelf: BandShelf): readonly PlaceAhead[] {
  const range = yearFrom(view.today);
  return places.map((lines) => {
    const kits = allLines(lines).map(({ kit }) => kit);
    const bands = new Map(kits.map((kit) => [kit.id, shelf.bandsOf(kit, view, range)]));
    return { lines, bands, shortfalls: shortfallsOf(lines.place, kits, bands, range) };
  });
}

/** A place as rows to draw: its strength, then so many of its kits as are asked for. */
export function rowsOf(ahead: PlaceAhead, range: DayRange, words: AheadWords, most = Infinity): readonly BandRow[] {
  const { lines, bands } = ahead;
  const kits = allLines(lines).slice(0, most);
  const rows = kits.map(({ kit }) => kitRow(kit, bands.get(kit.id) ?? [], words));
  return lines.place.strength === 0 ? rows : [strengthRow(ahead, range, words.bands), ...rows];
}

/** One kit's bands as a row to draw. */
export function kitRow(kit: KitState, bands: readonly Band[], words: AheadWords): BandRow {
  return { key: kit.id, label: kit.name, pieces: joinLike(bands.map((band) => pieceOf(band, words))) };
}

function pieceOf({ from, to, standing, because }: Band, words: AheadWords): BandPiece {
  const word = sayStanding(standing, words.parts);
  return {
    from,
    to,
    fill: standing,
    word,
    text: words.bands.piece({ word, because: inWords(because, words.standing) }),
  };
}

/** Bands of one standing side by side are drawn as one; why it goes on is in the table. */
function joinLike(pieces: readonly BandPiece[]): readonly BandPiece[] {
  return pieces.reduce<readonly BandPiece[]>((all, next) => {
    const last = all.at(-1);
    if (last?.fill !== next.fill) return [...all, next];
    return [...all.slice(0, -1), { ...last, to: next.to }];
  }, []);
}

/** Whether the place holds as many ready kits as it must, day by day. */
export function strengthRow({ lines, shortfalls }: PlaceAhead, range: DayRange, words: Words["bands"]): BandRow {
  const { place } = lines;
  const pieces = shortfalls.map(({ from, to, holds, must }) => ({
    from,
    to,
    fill: "short" as const,
    word: words.short({ count: must - holds }),
    text: words.readyOf({ holds, must }),
  }));
  return { key: `strength ${place.id}`, label: words.strength(), isHead: true, pieces: fillGaps(pieces, range, words) };
}

/** Days between shortfalls, on which there are enough. */
function fillGaps(short: readonly BandPiece[], { from, to }: DayRange, words: Words["bands"]): readonly BandPiece[] {
  const pieces: BandPiece[] = [];
  let day = from;
  for (const piece of short) {
    if (piece.from > day) pieces.push(enough(day, addDays(piece.from, -1), words));
    pieces.push(piece);
    day = addDays(piece.to, 1);
  }
  return day <= to ? [...pieces, enough(day, to, words)] : pieces;
}

function enough(from: string, to: string, words: Words["bands"]): BandPiece {
  return { from, to, fill: "enough", word: words.enough(), text: words.enoughReady() };
}

/** One line of the table that says the same as the bands. */
export interface AheadRow {
  readonly key: string;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly standing: string;
  readonly because: string;
}

/** The bands in words, every change of reason a line of its own. */
export function tableOf(
  { lines, bands }: PlaceAhead,
  words: Omit<AheadWords, "bands">,
  most = Infinity,
): readonly AheadRow[] {
  return allLines(lines)
    .slice(0, most)
    .flatMap(({ kit }) =>
      (bands.get(kit.id) ?? []).map((band) => ({
        key: `${kit.id} ${band.from}`,
        name: kit.name,
        from: sayDate(band.from),
        to: sayDate(band.to),
        standing: sayStanding(band.standing, words.parts),
        because: inWords(band.because, words.standing),
      })),
    );
}
