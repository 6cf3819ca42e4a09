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

/**
 * Area and water at a level in one look-up, for steps taken by the hundred thousand: as `areaAt` and `volumeAt` to the
 * last bit. Written into `out` from a place on, in this order [m²], [m³].
 */
export function shapeAt({ areas, step, volumes }: SoundedSpace, h: number, out: Float64Array, at: number): void {
  const last = areas.length - 1;
  const place = h / step;
  const k = place >= last ? last : place > 0 ? Math.floor(place) : 0;
  const low = areas[k]!;
  const over = h - k * step;
  if (areas.length === UPRIGHT || k === last) {
    out[at] = low;
    out[at + 1] = areas.length === UPRIGHT ? h * areas[0]! : volumes[last]! + over * low;
    return;
  }
  const more = areas[k + 1]! - low;
  out[at] = place > 0 ? low + (place - k) * more : low;
  out[at + 1] = volumes[k]! + over * (low + (more * over) / (2 * step));
}

/** Rise of the outside level with so much water let in [m]. */
export function riseWith({ rises, sinkage }: SoundedSpace, water: number): number {
  if (rises === undefined) return sinkage * water;
  const { values, water: step } = rises;
  const k = pieceAt(values, water / step);
  return values[k]! + (values[k + 1]! - values[k]!) * (water / step - k);
}

/** That rise, and the rise for each further cubic metre, in one look-up: written like `shapeAt`, in this order [m], [m⁻²]. */
export function seaWith({ rises, sinkage }: SoundedSpace, water: number, out: Float64Array, at: number): void {
  if (rises === undefined) {
    out[at] = sinkage * water;
    out[at + 1] = sinkage;
    return;
  }
  const { values, water: step } = rises;
  const place = water / step;
  const k = pieceAt(values, place);
  const more = values[k + 1]! - values[k]!;
  out[at] = values[k]! + more * (place - k);
  out[at + 1] = more / step;
}

function pieceAt(values: Float64Array, place: number): number {
  return place > 0 ? Math.min(values.length - 2, Math.floor(place)) : 0;
}
