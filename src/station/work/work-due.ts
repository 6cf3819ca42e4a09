import { dayIn, type PlainDate } from "#base";
import { outlookOf, workLinesOf, type KitState, type PartNeed, type Place, type WorkLine } from "#readiness";
import { ablePeople, type Able, type AbleOn, type WorkStation } from "./able.ts";

/** How many of a part that a kit needs lie on the shelf of its place, fit to be used; undefined where nobody knows. */
export type ShelfCount = (part: PartNeed, kit: KitState) => number | undefined;

/** A line of work with what a person wants to know before taking it. */
export interface DueLine extends Omit<WorkLine, "kit" | "parts">, Able {
  readonly kit: KitState;
  readonly place: Place;
  readonly parts: readonly (PartNeed & { readonly onShelf?: number })[];
  /** Hands wanted at once that nobody there has. */
  readonly lacking: number;
}

/**
 * The work due at a station: kits back and wet first, then overdue, this week and this month, the most pressing first.
 * A kit whose pattern is not here gives no line: the board tells of it.
 *
 * @param station - as its log tells it
 * @param now - RFC 3339; the day is taken at each place by its own zone
 * @param onShelf - what lies on the shelves, where that is known
 */
export function workDueOf(
  station: WorkStation,
  now: string,
  onShelf: ShelfCount = () => undefined,
): readonly DueLine[] {
  const open = station.places.filter(({ closed }) => !closed);
  const ableOn = ablePeople(station);
  const lines = open.flatMap((place) => linesAt(station, place, dayIn(place.zone, now), { onShelf, ableOn }));
  return lines.toSorted(byUrgency);
}

interface Judging {
  readonly onShelf: ShelfCount;
  readonly ableOn: AbleOn;
}

function linesAt(station: WorkStation, place: Place, today: PlainDate, judging: Judging): readonly DueLine[] {
  const versions = [...station.patterns.values()];
  return station.kits.flatMap((kit) => {
    const pattern = station.patterns.get(kit.pattern);
    if (kit.place !== place.id || kit.retired || !pattern) return [];
    const outlook = outlookOf(kit, pattern, station.policy, { otherPatternVersions: versions });
    return workLinesOf(kit, pattern, outlook, today).map((line) => {
      const able = judging.ableOn(line.work, pattern, today);
      return {
        ...line,
        kit,
        place,
        parts: line.parts.map((part) => withShelf(part, judging.onShelf(part, kit))),
        ...able,
        lacking: Math.max(0, line.people - able.hands.length),
      };
    });
  });
}

function withShelf(part: PartNeed, onShelf: number | undefined): DueLine["parts"][number] {
  return { ...part, ...(onShelf !== undefined && { onShelf }) };
}

const BUCKETS = ["wet", "overdue", "week", "month"] as const;

/** Wet kits by the time left, what is overdue by what it does to the kit, the rest by its day. */
function byUrgency(one: DueLine, other: DueLine): number {
  const bucket = BUCKETS.indexOf(one.bucket) - BUCKETS.indexOf(other.bucket);
  if (bucket !== 0) return bucket;
  if (one.flush && other.flush) return one.flush.by - other.flush.by;
  const [first, second] = [one, other].map(({ by, isGrounding }) => `${isGrounding ? 0 : 1}${by ?? ""}`);
  if (first !== second) return first! < second! ? -1 : 1;
  return one.kit.name.localeCompare(other.kit.name, "en", { numeric: true });
}
