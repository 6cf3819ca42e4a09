/** A point of a signature: 0 to 300 across, 0 to 100 down. */
export type Point = readonly [x: number, y: number];

/** A line drawn without lifting the finger: its first point and those that follow. */
export type Stroke = readonly [Point, ...Point[]];

/** Size of the pad that a signature is drawn on, in its own units. */
export const PAD = { width: 300, height: 100 } as const;

/** The most that is kept [characters], as the log takes it. */
const MOST = 6000;

/**
 * A signature as it is kept: whole numbers "x,y" with blanks between, strokes parted by ";".
 *
 * @returns undefined for an empty pad; where it is longer than the log takes, each stroke has every second point less
 * @example writeStrokes([[[10.4, 40], [12, 38]]]) // "10,40 12,38"
 */
export function writeStrokes(strokes: readonly Stroke[]): string | undefined {
  if (strokes.length === 0) return undefined;
  const text = strokes.map((stroke) => stroke.map((point) => point.map(inPad).join(",")).join(" ")).join(";");
  if (text.length <= MOST) return text;
  return writeStrokes(thinned(strokes));
}

/**
 * Strokes of a signature that was kept.
 *
 * @param text - as {@link writeStrokes} wrote it; anything else in it is passed over
 * @example strokesOf("10,40 12,38;90,20") // [[[10, 40], [12, 38]], [[90, 20]]]
 */
export function strokesOf(text: string): readonly Stroke[] {
  return text.split(";").flatMap((part) => {
    const [first, ...more] = part.split(" ").flatMap((pair) => pointOf(pair) ?? []);
    return first === undefined ? [] : [[first, ...more] as const];
  });
}

function pointOf(pair: string): [Point] | undefined {
  const [, x, y] = /^(\d{1,3}),(\d{1,3})$/.exec(pair) ?? [];
  return x === undefined || y === undefined ? undefined : [[Number(x), Number(y)]];
}

function inPad(value: number, axis: number): number {
  return Math.round(Math.min(Math.max(value, 0), axis === 0 ? PAD.width : PAD.height));
}

/** Every second point, the first of each stroke kept; of strokes that are points already, every second stroke. */
function thinned(strokes: readonly Stroke[]): readonly Stroke[] {
  if (strokes.every((stroke) => stroke.length === 1)) return strokes.filter((_, at) => at % 2 === 0);
  return strokes.map(([first, ...more]) => [first, ...more.filter((_, at) => at % 2 === 1)]);
}
