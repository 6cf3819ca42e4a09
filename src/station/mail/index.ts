export { lettersDue, placesShort, trialLetter } from "./letters.ts";
export type {
  HasMail,
  KeptLetter,
  Letter,
  LetterOutcome,
  LetterStanding,
  MailRound,
  MailShelf,
  RoundMemory,
  MailWish,
  WeeklyWish,
} from "./mail-shelf.ts";
