export { findingsByYear, FINDINGS_TO_TELL, type FindingsByYear, type YearFound } from "./findings-by-year.ts";
export { cardPictures, type PictureTold } from "./card-told.ts";
export type { CheckFound } from "./checks-found.ts";
export { reportsOf, type LineHard } from "./lines-hard.ts";
export type { MinutesTaken } from "./minutes-taken.ts";
export type { ModeFound, UnnamedFound } from "./modes-found.ts";
export { OPENINGS_TO_TELL, SELDOM, type Proposal } from "./proposals.ts";
export { reportCard, type ReportCard } from "./report-card.ts";
