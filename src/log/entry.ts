/**
 * One line in the log: who, when, on which device, what. Never changed; only struck by a later entry.
 *
 * The log knows no pumps: `kind` and `body` mean something only to the rooms above it.
 */
export interface Entry<Kind extends string = string, Body = unknown> {
  /** UUIDv7 made on the device, lower case. */
  readonly id: string;
  /** Where the entry belongs; "station" for what concerns the whole station. */
  readonly place: string;
  /** What it is about: a kit, person, place, device or pattern id such as "kit:7f3k". */
  readonly subject: string;
  readonly kind: Kind;
  /** RFC 3339 with offset: the wall clock of the device when the entry was made. */
  readonly at: string;
  /** Person id of who made it. */
  readonly by: string;
  /** Device id it was made on. */
  readonly device: string;
  /** Pattern the entry was made under, "id@version", where one applies. */
  readonly pattern?: string;
  /**
   * The newest entries of the same subject that the device knew (those that no other known entry names here).
   * Two entries of which neither descends from the other were made without sight of each other.
   */
  readonly after?: readonly string[];
  readonly body: Body;
}

/** The body of the one kind that the log itself understands. */
export interface StrikeBody {
  /** Id of the struck entry; of the same subject. */
  readonly entry: string;
  readonly reason: string;
}

/** Kind of the entry that strikes another. */
export const STRIKE = "struck";

/** The pseudo place that holds what concerns the whole station: people, devices, policy. */
export const STATION_PLACE = "station";

/** An entry as a store keeps it: numbered without gaps within its place and chained by hash. */
export interface KeptEntry {
  readonly entry: Entry;
  /** 1, 2, 3 ... within the entry's place, in order of arrival. */
  readonly seq: number;
  /** Lower-case hex SHA-256 of the previous hash in this place, the time of receipt and the entry's canonical form. */
  readonly hash: string;
  /** RFC 3339 UTC instant at which a store first took it. */
  readonly received: string;
}
