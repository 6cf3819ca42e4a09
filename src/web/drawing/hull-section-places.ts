/** A boat as it is drawn: lengths and heights above the keel in [m], x from the after end. */
export interface HullDrawn {
  readonly length: number;
  readonly beam: number;
  readonly depth: number;
  readonly spaces: readonly { readonly name: string; readonly from: number; readonly to: number }[];
  /** Outside water at the ends, and water in each space at its bulkheads. */
  readonly aft: number;
  readonly forward: number;
  readonly inside: readonly { readonly aft: number; readonly forward: number }[];
  /** List to starboard [rad]; 0 where none was seen. */
  readonly list: number;
}

/** Edges of the field a view is drawn in [px]. */
export interface HullFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The boat from the side, everything at its place [px]. */
export interface ProfilePlaces {
  readonly outline: string;
  /** Level of the sea. */
  readonly sea: number;
  readonly water: readonly {
    readonly name: string;
    readonly path: string;
    readonly x: number;
    readonly surface: number;
  }[];
  readonly bulkheads: readonly string[];
  /** Where least of her deck edge is above the water. */
  readonly freeboard: {
    readonly x: number;
    readonly deck: number;
    readonly sea: number;
    /** Height clear of the sheer over the length of the words that stand there. */
    readonly clear: number;
  };
  readonly ends: { readonly stern: number; readonly bow: number };
}

/** Heights are drawn so many times as large as lengths, so that a hand's breadth of water is seen. */
export const STRETCH = 1.8;

type Put = (x: number, z: number) => { readonly x: number; readonly y: number };

/** Places the boat as seen from her port side, bow to the left, trimmed as she lies; the sea is level. */
export function placeProfile(drawn: HullDrawn, frame: HullFrame): ProfilePlaces {
  const put = putter(drawn, frame);
  const deck = deckEnds(drawn);
  const isAft = deck.aft <= deck.forward;
  const low = isAft ? 0.02 * drawn.length : 0.94 * drawn.length;
  return {
    outline: outlineOf(drawn, put),
    sea: seaOf(frame),
    water: drawn.spaces.map((space, i) => waterIn(drawn, space, drawn.inside[i]!, put)),
    bulkheads: bulkheadsOf(drawn, put),
    freeboard: { x: put(low, 0).x, deck: put(low, drawn.depth).y, sea: seaOf(frame), clear: clearOf(drawn, put, low) },
    ends: { stern: put(0, 0).x, bow: put(drawn.length, 0).x },
  };
}

/** How long the words at the deck edge are [px]. */
const WORDS = 150;

function clearOf({ length, depth }: HullDrawn, put: Put, low: number): number {
  const inward = (WORDS * length) / Math.abs(put(0, 0).x - put(length, 0).x);
  const other = low < length / 2 ? Math.min(length, low + inward) : Math.max(0, low - inward);
  return Math.min(put(low, depth).y, put(other, depth).y);
}

function putter({ length, depth, aft, forward }: HullDrawn, frame: HullFrame): Put {
  const sea = seaOf(frame);
  const above = 1.08 * depth - Math.min(aft, forward);
  const below = Math.max(aft, forward);
  const fit = Math.min((sea - frame.top) / Math.max(above, 0.1), (frame.bottom - sea) / Math.max(below, 0.1));
  const across = Math.min((frame.right - frame.left) / length, fit / STRETCH);
  const right = (frame.left + frame.right + length * across) / 2;
  return (x, z) => ({
    x: right - x * across,
    y: sea - (z - (aft + ((forward - aft) * x) / length)) * across * STRETCH,
  });
}

function seaOf({ top, bottom }: HullFrame): number {
  return top + 0.52 * (bottom - top);
}

/** Deck edge above the sea at both ends [m]. */
function deckEnds({ depth, aft, forward }: HullDrawn): { readonly aft: number; readonly forward: number } {
  return { aft: depth - aft, forward: depth - forward };
}

function outlineOf({ length, depth }: HullDrawn, put: Put): string {
  const at = (share: number, height: number) => write(put(share * length, height * depth));
  return `M${at(0, 1)} L${at(0.01, 0.25)} Q${at(0.03, 0)} ${at(0.12, 0)} L${at(0.72, 0)} Q${at(0.9, 0.05)} ${at(0.96, 0.5)} L${at(1, 1.08)} Q${at(0.75, 1)} ${at(0.5, 1)} Z`;
}

/** The water of a space, from its floor to its surface; what of it lies outside the outline is clipped away. */
function waterIn(
  { depth }: HullDrawn,
  space: HullDrawn["spaces"][number],
  level: HullDrawn["inside"][number],
  put: Put,
): ProfilePlaces["water"][number] {
  const corners = [
    put(space.from, 0),
    put(space.to, 0),
    put(space.to, Math.min(level.forward, depth)),
    put(space.from, Math.min(level.aft, depth)),
  ];
  const middle = put((space.from + space.to) / 2, (level.aft + level.forward) / 2);
  return { name: space.name, path: `M${corners.map(write).join(" L")} Z`, x: middle.x, surface: middle.y };
}

function bulkheadsOf({ length, depth, spaces }: HullDrawn, put: Put): readonly string[] {
  const places = new Set(spaces.flatMap(({ from, to }) => [from, to]));
  return [...places]
    .filter((x) => x > 0.01 * length && x < 0.99 * length)
    .map((x) => `M${write(put(x, 0))} L${write(put(x, depth))}`);
}

function write({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

/** The boat from astern, everything at its place [px]; the hull is turned by the list about its middle. */
export interface SternPlaces {
  readonly outline: string;
  readonly sea: number;
  /** Water inside, level whatever the list. */
  readonly inside: number;
  readonly turn: { readonly degrees: number; readonly x: number; readonly y: number };
}

/** Places the section at the sounded space, seen from astern: starboard is right. */
export function placeStern(drawn: HullDrawn, frame: HullFrame): SternPlaces {
  const scale = Math.min(
    (0.72 * (frame.right - frame.left)) / drawn.beam,
    (0.62 * (frame.bottom - frame.top)) / drawn.depth,
  );
  const middle = (frame.left + frame.right) / 2;
  const sea = seaOf(frame);
  const space = drawn.spaces[0];
  const x = space ? (space.from + space.to) / 2 : drawn.length / 2;
  const outside = drawn.aft + ((drawn.forward - drawn.aft) * x) / drawn.length;
  const level = drawn.inside[0] ? (drawn.inside[0].aft + drawn.inside[0].forward) / 2 : 0;
  const y = (z: number) => sea - (z - outside) * scale;
  const half = (drawn.beam / 2) * scale;
  return {
    outline: `M${middle - half} ${y(drawn.depth)} C${middle - half} ${y(0.2 * drawn.depth)} ${middle - 0.6 * half} ${y(0)} ${middle} ${y(0)} C${middle + 0.6 * half} ${y(0)} ${middle + half} ${y(0.2 * drawn.depth)} ${middle + half} ${y(drawn.depth)} Z`,
    sea,
    inside: y(Math.min(level, drawn.depth)),
    turn: { degrees: (drawn.list * 180) / Math.PI, x: middle, y: sea },
  };
}
