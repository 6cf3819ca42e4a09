import {
  isReady,
  strengthOf,
  type KitState,
  type Place,
  type Standing,
  type StandingKind,
  type Strength,
} from "#readiness";
import type { StationView } from "../device/sync/contract.ts";

/** A kit as the board lists it. */
export interface KitLine {
  readonly kit: KitState;
  readonly standing: Standing;
}

/** A place as the board lists it: what needs doing first, then what is ready, by what ends first. */
export interface PlaceLines {
  readonly place: Place;
  readonly strength: Strength;
  readonly notReady: readonly KitLine[];
  readonly ready: readonly KitLine[];
}

type Seen = Pick<StationView, "kits" | "places" | "place" | "standings">;

/** Every open place with its kits, the person's own place first. */
export function placeLines(view: Seen): readonly PlaceLines[] {
  return ownFirst(view).map((place) => {
    const lines = linesAt(view, place).toSorted(byUrgency);
    return {
      place,
      strength: strengthOf(place, view.kits, view.standings),
      notReady: lines.filter(({ standing }) => !isReady(standing.standing)),
      ready: lines.filter(({ standing }) => isReady(standing.standing)),
    };
  });
}

/** The kits whose name or serial has the text in it; all of them for no text. */
export function findLines(places: readonly PlaceLines[], text: string): readonly PlaceLines[] {
  const wanted = text.trim().toLocaleLowerCase("en");
  if (wanted === "") return places;
  const has = ({ kit }: KitLine) => `${kit.name}\n${kit.serial}`.toLocaleLowerCase("en").includes(wanted);
  return places.map((one) => ({ ...one, notReady: one.notReady.filter(has), ready: one.ready.filter(has) }));
}

/** Every kit of a place, in the board's order. */
export function allLines({ notReady, ready }: Pick<PlaceLines, "notReady" | "ready">): readonly KitLine[] {
  return [...notReady, ...ready];
}

/** The kits of a place by standing, ready first and grounded last. */
export function byStanding(
  lines: Pick<PlaceLines, "notReady" | "ready">,
): readonly { readonly standing: StandingKind; readonly kits: readonly KitState[] }[] {
  const kits = allLines(lines).toSorted(({ kit: one }, { kit: other }) => byName(one, other));
  return BEST_FIRST.flatMap((standing) => {
    const these = kits.filter((line) => line.standing.standing === standing).map(({ kit }) => kit);
    return these.length === 0 ? [] : [{ standing, kits: these }];
  });
}

const BEST_FIRST = ["ready", "ready-with-limits", "away", "open", "grounded"] as const;

function byName(one: KitState, other: KitState): number {
  return one.name.localeCompare(other.name, "en", { numeric: true });
}

function ownFirst({ places, place }: Seen): readonly Place[] {
  return [...places.filter(({ id }) => id === place.id), ...places.filter(({ id }) => id !== place.id)];
}

function linesAt({ kits, standings }: Seen, place: Place): KitLine[] {
  return kits.flatMap((kit) => {
    const standing = kit.place === place.id ? standings.get(kit.id) : undefined;
    return standing ? [{ kit, standing }] : [];
  });
}

const URGENCY = { grounded: 0, open: 1, away: 2, "ready-with-limits": 3, ready: 3 } as const;
const NEVER = "9999-12-31";

/** Grounded, open, away; then by the day that ends the standing; then by name, figures in order of size. */
function byUrgency(one: KitLine, other: KitLine): number {
  const [first, second] = [URGENCY[one.standing.standing], URGENCY[other.standing.standing]];
  if (first !== second) return first - second;
  const [day, otherDay] = [one.standing.lapse?.day ?? NEVER, other.standing.lapse?.day ?? NEVER];
  if (day !== otherDay) return day < otherDay ? -1 : 1;
  return byName(one.kit, other.kit);
}
