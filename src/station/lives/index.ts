export type { Lasting } from "#reliability";
export { agesTold, wearOf, type AgesTold, type AgeTold } from "./ages-told.ts";
export { MOST_LOOKS, rangesOf, type LifeTold, type LifeVerdict } from "./life-told.ts";
export { kitLasts, type KitLasts } from "./kit-lasts.ts";
export { itemLife, patternLives, type ItemLifeClose, type ItemLives, type LivesLog } from "./pattern-lives.ts";
