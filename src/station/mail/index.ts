export { lettersDue, placesShort, trialLetter } from "./letters.ts";
export type {
  HasMail,
  KeptLetter,
  Letter,
  LetterOutcome,
  LetterStanding,
  MailShelf,
  MailWish,
  WeeklyWish,
} from "./mail-shelf.ts";
