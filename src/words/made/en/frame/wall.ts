/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { WallWords } from "#src/words/made/frame/wall.ts";

const words: WallWords = {
  title: () => "Wall of a place",
  short: () => "Wall",
  asking: () => "Asking the station.",
  noLink: () => "Open the whole link that the keeper made for this screen.",
  withdrawn: () => "This link opens nothing: it was withdrawn, or is not whole. Ask the keeper for another.",
  wasSo: (d) => "The station is not reached. This was so at " + d.time + ".",
  notReached: () => "The station is not reached. This screen keeps trying.",
  order: () => "Take in this order",
  not: (d) => "Not: " + d.kits,
  kitIs: (d) => d.kit + " (" + d.standing + ")",
  week: () => "Work of this week",
  none: () => "None is due.",
  foot: (d) => d.station + ", " + d.day + ". Estimates; what is seen goes before them.",
  work: (d) => d.what + ". " + d.when,
  takers: (d) => d.names + ".",
  flushBy: (d) => "Flush by " + d.time + ".",
  now: () => "Now.",
  by: (d) => "By " + d.day + ".",
  more: (d) => "And " + d.count + " more.",
};
export default words;
