import { dayIn, type PlainDate } from "#base";
import { isReady, standingInWords, type StandingKind, type Strength, type WorkTask } from "#readiness";
import { ENGLISH } from "#words";
import { boardOf, type BoardKit } from "../board.ts";
import type { StationReading } from "../station-reading.ts";
import { workDueOf, type DueLine } from "./work-due.ts";

/** What the wall of a place shows, and all that its link gives away. */
export interface WallView {
  readonly stationName: string;
  readonly placeName: string;
  /** Calendar day there. */
  readonly day: PlainDate;
  /** RFC 3339: when it was worked out. */
  readonly at: string;
  readonly strength: Strength;
  /** Kits that may go, in the order to take them. */
  readonly kits: readonly WallKit[];
  /** Kits that may not go, by name. */
  readonly notReady: readonly WallKit[];
  /** Work on top, overdue and of this week. */
  readonly work: readonly WallWork[];
}

/** A kit on the wall. */
export interface WallKit {
  readonly name: string;
  readonly standing: StandingKind;
  /** The limits, or why it may not go. */
  readonly because: readonly string[];
}

/** A line of work on the wall. */
export interface WallWork {
  readonly kit: string;
  readonly bucket: DueLine["bucket"];
  readonly tasks: readonly Pick<WorkTask, "sort" | "proveAt">[];
  readonly by?: PlainDate;
  /** Latest time for the first flush [ms] since 1970-01-01 UTC. */
  readonly flushBy?: number;
  readonly isGrounding: boolean;
  readonly planned?: PlainDate;
  /** Names of who took it. */
  readonly takers: readonly string[];
}

/**
 * What the wall of a place shows. The order to take kits in: ready before ready with limits, the one sealed last first.
 *
 * @param reading - the station as its log tells it
 * @param place - id of an open place
 * @param now - RFC 3339
 * @returns undefined where there is no such place, or it is closed
 */
export function wallOf(reading: StationReading, place: string, now: string): WallView | undefined {
  const board = boardOf(reading, now).places.find((one) => one.place.id === place);
  if (board === undefined) return undefined;
  const kits = board.kits.toSorted(byTaking);
  const work = workDueOf({ ...reading, places: [board.place] }, now).filter(({ bucket }) => bucket !== "month");
  const names = new Map(reading.people.map(({ id, name }) => [id, name]));
  return {
    stationName: reading.stationName,
    placeName: board.place.name,
    day: dayIn(board.place.zone, now),
    at: now,
    strength: board.strength,
    kits: kits.filter(({ standing }) => isReady(standing.standing)).map(wallKit),
    notReady: kits.filter(({ standing }) => !isReady(standing.standing)).map(wallKit),
    work: work.map((line) => wallWork(line, names)),
  };
}

function byTaking(one: BoardKit, other: BoardKit): number {
  const limited = Number(one.standing.standing !== "ready") - Number(other.standing.standing !== "ready");
  if (limited !== 0) return limited;
  const [first, second] = [sealedAt(one), sealedAt(other)];
  return second - first || one.kit.name.localeCompare(other.kit.name, "en", { numeric: true });
}

function sealedAt({ kit }: BoardKit): number {
  return kit.seal === undefined ? 0 : Date.parse(kit.seal.at);
}

function wallKit({ kit, standing }: BoardKit): WallKit {
  const isLimited = standing.standing === "ready-with-limits";
  const said = standingInWords(standing, ENGLISH.standing);
  const because = isLimited ? said.limits : said.because.map(({ text }) => text);
  return { name: kit.name, standing: standing.standing, because: standing.standing === "ready" ? [] : because };
}

function wallWork(line: DueLine, names: ReadonlyMap<string, string>): WallWork {
  const { bucket, by, flush, isGrounding, planned } = line;
  return {
    kit: line.kit.name,
    bucket,
    tasks: line.tasks.map(({ sort, proveAt }) => ({ sort, ...(proveAt && { proveAt }) })),
    ...(by !== undefined && { by }),
    ...(flush && { flushBy: flush.by }),
    isGrounding,
    ...(planned !== undefined && { planned }),
    takers: line.said.takers.map(({ person }) => names.get(person) ?? person),
  };
}
