export { StartBook, type StartLog, type KitStartRecord } from "./start-book.ts";
export { daysSinceProof, tonightOf, workingCurve, type Tonight } from "./tonight.ts";
export { enoughTonight, SHARED, type EnoughTonight } from "./enough-tonight.ts";
