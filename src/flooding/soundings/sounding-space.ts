/** The space being sounded, as levels above its own floor see it. */
export interface SoundedSpace {
  /** Water area against level: even steps of `step` from the floor up, held beyond the last [m²]. */
  readonly areas: Float64Array;
  readonly step: number;
  /** Water under each of those levels [m³]. */
  readonly volumes: Float64Array;
  /** Outside level above the floor with the space empty [m], and how sure that is (standard deviation) [m]. */
  readonly outside: number;
  readonly outsideDoubt: number;
  /** Rise of the outside level against the space for each cubic metre let in [m⁻²]; 0 for a vessel held in place. */
  readonly sinkage: number;
  /** That rise where it is not in proportion: at even steps of `water` let in [m³], from none up [m]. */
  readonly rises?: { readonly water: number; readonly values: Float64Array };
  /** Level at which she is lost [m], where that is known. */
  readonly lossLevel?: number;
  /** The same were she upright [m], where a list brings it down: the hull is guessed upright, the list is seen. */
  readonly uprightLoss?: number;
}

/**
 * A space with upright sides.
 *
 * @param given - `area` of floodable plan [m²]; `outside` level above the floor [m]
 * @returns the space
 * @source DERIVED: docs/methods/soundings.md, "The space"
 */
export function uprightSpace(given: {
  readonly area: number;
  readonly outside: number;
  readonly outsideDoubt: number;
  readonly sinkage?: number;
  readonly lossLevel?: number;
}): SoundedSpace {
  return {
    areas: new Float64Array(2).fill(given.area),
    step: 1,
    volumes: Float64Array.of(0, given.area),
    outside: given.outside,
    outsideDoubt: given.outsideDoubt,
    sinkage: given.sinkage ?? 0,
    ...(given.lossLevel === undefined ? {} : { lossLevel: given.lossLevel }),
  };
}

/** Areas of a space with upright sides are given at two levels. */
const UPRIGHT = 2;

/** Water area at a level, by straight lines. */
export function areaAt(space: SoundedSpace, h: number): number {
  const { areas, step } = space;
  if (areas.length === UPRIGHT) return areas[0]!;
  const place = h / step;
  const last = areas.length - 1;
  if (!(place > 0)) return areas[0]!;
  if (place >= last) return areas[last]!;
  const k = Math.floor(place);
  return areas[k]! + (place - k) * (areas[k + 1]! - areas[k]!);
}

/**
 * Water under a level, areas as drawn: between two of them the area goes in a straight line.
 *
 * @param space - being sounded
 * @param h - level above its floor [m]
 * @returns [m³]
 * @source DERIVED: the integral of `areaAt`
 * @example volumeAt(uprightSpace({ area: 12, outside: 1, outsideDoubt: 0 }), 0.5) // 6
 */
export function volumeAt(space: SoundedSpace, h: number): number {
  const { areas, step, volumes } = space;
  if (areas.length === UPRIGHT) return h * areas[0]!;
  const last = areas.length - 1;
  const k = Math.min(last, Math.max(0, Math.floor(h / step)));
  const over = h - k * step;
  if (k === last) return volumes[last]! + over * areas[last]!;
  return volumes[k]! + over * (areas[k]! + ((areas[k + 1]! - areas[k]!) * over) / (2 * step));
}

/** Rise of the outside level with so much water let in [m]. */
export function riseWith(space: SoundedSpace, water: number): number {
  if (space.rises === undefined) return space.sinkage * water;
  const { values, water: step } = space.rises;
  const k = pieceAt(space.rises, water);
  return values[k]! + (values[k + 1]! - values[k]!) * (water / step - k);
}

/** Rise for each further cubic metre [m⁻²]. */
export function sinkageWith(space: SoundedSpace, water: number): number {
  if (space.rises === undefined) return space.sinkage;
  const { values, water: step } = space.rises;
  const k = pieceAt(space.rises, water);
  return (values[k + 1]! - values[k]!) / step;
}

function pieceAt({ water: step, values }: NonNullable<SoundedSpace["rises"]>, water: number): number {
  return Math.min(values.length - 2, Math.max(0, Math.floor(water / step)));
}
