/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { BandsWords } from "#src/words/made/frame/bands.ts";

const words: BandsWords = {
  meaning: () => "Ce que disent les bandes",
  fewer: () => "Moins de prêts que demandés",
  today: () => "Aujourd'hui",
  strength: () => "Effectif",
  short: (d) => "manque " + d.count,
  readyOf: (d) => d.holds + " prêts sur " + d.must,
  enough: () => "Assez",
  enoughReady: () => "Assez de prêts",
  piece: (d) => d.word + " : " + d.because,
  jan: () => "janv.",
  feb: () => "févr.",
  mar: () => "mars",
  apr: () => "avr.",
  may: () => "mai",
  jun: () => "juin",
  jul: () => "juil.",
  aug: () => "août",
  sep: () => "sept.",
  oct: () => "oct.",
  nov: () => "nov.",
  dec: () => "déc.",
  janOf: (d) => "janv. " + d.year,
};
export default words;
