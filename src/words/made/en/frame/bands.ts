/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { BandsWords } from "#src/words/made/frame/bands.ts";

const words: BandsWords = {
  meaning: () => "What the bands mean",
  fewer: () => "Fewer ready than wanted",
  today: () => "Today",
  strength: () => "Strength",
  short: (d) => d.count + " short",
  readyOf: (d) => d.holds + " ready of " + d.must,
  enough: () => "Enough",
  enoughReady: () => "Enough ready",
  piece: (d) => d.word + ": " + d.because,
  jan: () => "Jan",
  feb: () => "Feb",
  mar: () => "Mar",
  apr: () => "Apr",
  may: () => "May",
  jun: () => "Jun",
  jul: () => "Jul",
  aug: () => "Aug",
  sep: () => "Sep",
  oct: () => "Oct",
  nov: () => "Nov",
  dec: () => "Dec",
  janOf: (d) => "Jan " + d.year,
};
export default words;
