// What casualties are drawn from: boats, the stick and the watch. A second setting has other hulls and a rougher stick, so
// that what was chosen beside the first can be held against casualties nobody has looked at.

/** Ranges are even, from and to. */
export interface Setting {
  /** Length of the boat [m]. */
  readonly length: readonly [number, number];
  /** Log spread of the beam against the usual, and of a space's length against what is believed. */
  readonly beamSpread: number;
  readonly believedWrong: number;
  /** Factor on the exponents of the sections: below 1 finer, above 1 fuller. */
  readonly fullness: number;
  /** Factor on the depth of the hull: a boat that is deeper or shallower than the published ones of her kind. */
  readonly deeper: readonly [number, number];
  /** How often her beam is told. */
  readonly beamTold: number;
  readonly stick: {
    /** Error, one standard deviation [m]. */
    readonly error: readonly [number, number];
    /** How often the water slops about, and how much [m]. */
    readonly sloshShare: number;
    readonly slosh: number;
    /** Times are written so far off, one standard deviation [s]. */
    readonly timeError: number;
  };
  /** Seconds between soundings, one of them by casualty. */
  readonly intervals: readonly number[];
}

export const SETTINGS = {
  usual: {
    length: [6, 14],
    beamSpread: 0.1,
    believedWrong: 0.2,
    fullness: 1,
    deeper: [1, 1],
    beamTold: 0.3,
    stick: { error: [0.005, 0.02], sloshShare: 0.1, slosh: 0.03, timeError: 10 },
    intervals: [120, 180, 180, 240, 300],
  },
  other: {
    length: [5, 18],
    beamSpread: 0.14,
    believedWrong: 0.25,
    fullness: 1.25,
    deeper: [0.9, 1.15],
    beamTold: 0.15,
    stick: { error: [0.008, 0.025], sloshShare: 0.15, slosh: 0.035, timeError: 15 },
    intervals: [120, 150, 180, 240, 360],
  },
} as const satisfies Readonly<Record<string, Setting>>;

export type SettingName = keyof typeof SETTINGS;
