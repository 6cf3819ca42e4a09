import type { KitState } from "#readiness";
import type { Words } from "#words";
import { enoughTonight, StartBook, tonightOf, type EnoughTonight } from "#station";
import type { StationView } from "#web/device/index.ts";
import { sayCommon, sayEnough, sayEnoughRests, sayToldOf, sayTonightShort } from "#web/kit-view/starts/start-words.ts";

/** What the board says of starting: fetched and worked out after the board itself stands. */
export interface Starts {
  /** Of one kit; undefined where nothing can be told of it. */
  ofKit(kit: KitState): string | undefined;
  /** Of the ready kits of a place, what they have in common, and what that rests on. */
  ofPlace(
    ready: readonly KitState[],
    least: number,
  ): { readonly words: string; readonly common: readonly string[]; readonly rests: string } | undefined;
}

type StartWords = Words["starts"];

/** Reads starts off a view. The book keeps what it counted from one view to the next. */
export function startsFrom(book: StartBook, view: StationView, words: StartWords): Starts {
  const now = `${view.today}T12:00:00Z`;
  return {
    ofKit: (kit) => {
      const record = book.read(kit, view);
      const tonight = tonightOf(record, now);
      return tonight && sayTonightShort(tonight, record, words);
    },
    ofPlace: (ready, least) => {
      const enough = enoughTonight(book, ready, least, view, now);
      if (!enough) return undefined;
      const counted = sayEnoughRests(enough, (id) => nameOfKit(view, id), words);
      const rests = [counted, sayToldOf(ready, words) ?? []].flat().join(" ");
      return { words: sayEnough(enough, words), common: commonWords(enough, view, words), rests };
    },
  };
}

/** An empty book. */
export function newBook(): StartBook {
  return new StartBook();
}

function nameOfKit(view: StationView, id: string): string {
  return view.kits.find((kit) => kit.id === id)?.name ?? id;
}

function commonWords(enough: EnoughTonight, view: StationView, words: StartWords): readonly string[] {
  const people = new Map(view.people.map(({ id, name }) => [id, name]));
  const items = [...view.patterns.values()].flatMap(({ items: all }) => all);
  const nameOf = (of: string) => people.get(of) ?? items.find(({ id }) => id === of)?.name ?? of;
  return sayCommon(enough, { kit: (id) => nameOfKit(view, id), other: nameOf }, words);
}
