import type { CasualtyBoatKind, CasualtySpace } from "#readiness";

/* What people can say over a bad radio, with the figure it stands for. SI; absent where nobody knows. */

/** One of a few answers, as big as a thumb. */
export interface Pick {
  readonly id: string;
  readonly words: string;
  /** SI; undefined for "not known". */
  readonly si?: number;
}

/** Length of the boat [m]. */
export const LENGTHS: readonly Pick[] = [5, 7, 9, 11, 13, 16, 20, 25].map((si) => ({
  id: `l${si}`,
  words: `${si} m`,
  si,
}));

/** Distance to her [m]. */
export const DISTANCES: readonly Pick[] = [0, 1, 3, 5, 8, 12, 20].map((miles) => ({
  id: `d${miles}`,
  words: miles === 0 ? "Here" : `${miles} nmi`,
  si: miles * 1852,
}));

const UNKNOWN: Pick = { id: "unknown", words: "Not known" };

/** The hole across [m]. */
export const HOLES: readonly Pick[] = [
  UNKNOWN,
  { id: "finger", words: "Finger, 20 mm", si: 0.02 },
  { id: "hose", words: "Hose, 40 mm", si: 0.04 },
  { id: "fist", words: "Fist, 90 mm", si: 0.09 },
  { id: "plate", words: "Plate, 200 mm", si: 0.2 },
  { id: "larger", words: "Larger, 400 mm", si: 0.4 },
];

/** The hole below the waterline [m]. */
export const DEPTHS: readonly Pick[] = [
  UNKNOWN,
  { id: "hand", words: "A hand, 0.2 m", si: 0.2 },
  { id: "arm", words: "An arm, 0.6 m", si: 0.6 },
  { id: "deep", words: "Deeper, 1 m", si: 1 },
];

/** Water inside now [m]. */
export const WATERS: readonly Pick[] = [
  UNKNOWN,
  { id: "ankle", words: "Ankle, 10 cm", si: 0.1 },
  { id: "shin", words: "Shin, 30 cm", si: 0.3 },
  { id: "knee", words: "Knee, 50 cm", si: 0.5 },
  { id: "waist", words: "Waist, 1 m", si: 1 },
];

/** How fast it rises [m/s]. */
export const RISES: readonly Pick[] = [
  UNKNOWN,
  { id: "r1", words: "1 cm in 2 min", si: 0.01 / 120 },
  { id: "r3", words: "3 cm in 2 min", si: 0.03 / 120 },
  { id: "r10", words: "10 cm in 2 min", si: 0.1 / 120 },
  { id: "r30", words: "30 cm in 2 min", si: 0.3 / 120 },
];

export const BOATS: readonly { readonly id: CasualtyBoatKind; readonly words: string }[] = [
  { id: "open boat", words: "Open boat" },
  { id: "motor boat", words: "Motor boat" },
  { id: "sailing yacht", words: "Sailing yacht" },
  { id: "fishing boat", words: "Fishing boat" },
];

export const SPACE_SORTS: readonly { readonly id: CasualtySpace["sort"]; readonly words: string }[] = [
  { id: "engine-room", words: "Engine room" },
  { id: "cabin", words: "Cabin" },
  { id: "hold", words: "Hold, stores" },
  { id: "open", words: "Open well" },
];

export const SPACE_PARTS: readonly { readonly id: CasualtySpace["part"]; readonly words: string }[] = [
  { id: "aft", words: "Aft" },
  { id: "middle", words: "Middle" },
  { id: "forward", words: "Forward" },
  { id: "whole", words: "All of her" },
];

/** Where water is on such a boat until somebody says otherwise. */
export function likelySpace(kind: CasualtyBoatKind): CasualtySpace {
  if (kind === "open boat") return { id: "space-1", name: "Open well", sort: "open", part: "whole" };
  if (kind === "sailing yacht") return { id: "space-1", name: "Cabin", sort: "cabin", part: "whole" };
  return { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" };
}
