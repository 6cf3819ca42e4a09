import { plainName } from "#base";

/** A pump with what people call it. */
export interface NamedPump {
  readonly name: string;
  /** Id of the kit, where it is one. */
  readonly kit?: string;
}

/** No name is longer: it may be written again as it is shown. */
const LONGEST = 80;
/** What was put behind a name before. */
const APART = /\s\((?:kit|other pump)(?: \d+)?\)$/;

/**
 * Pumps of one name told apart by what they are, and by number where that is not enough: a kit and the boat's own pump
 * may both be "Pump 1", and two devices may each put a pump there.
 *
 * @param pumps - in the order in which they were first set
 * @returns in that order; one whose name is its own is returned as it is
 * @example namesApart([{ name: "Pump 1", kit: "k1" }, { name: "Pump 1" }])[1].name // "Pump 1 (other pump)"
 */
export function namesApart<Pump extends NamedPump>(pumps: readonly Pump[]): readonly Pump[] {
  const bases = pumps.map(({ name }) => plainName(bare(name)));
  return pumps.map((pump, at) => {
    const like = pumps.filter((_, other) => bases[other] === bases[at]);
    if (like.length === 1) return pump;
    const name = withMark(bare(pump.name), markOf(pump, like));
    return name === pump.name ? pump : { ...pump, name };
  });
}

function bare(name: string): string {
  return name.replace(APART, "");
}

function markOf(pump: NamedPump, like: readonly NamedPump[]): string {
  const sort = like.filter(({ kit }) => (kit === undefined) === (pump.kit === undefined));
  const number = sort.length > 1 ? ` ${sort.indexOf(pump) + 1}` : "";
  return ` (${pump.kit === undefined ? "other pump" : "kit"}${number})`;
}

function withMark(name: string, mark: string): string {
  return `${name.slice(0, LONGEST - mark.length)}${mark}`;
}
