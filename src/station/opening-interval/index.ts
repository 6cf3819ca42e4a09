export type { OpeningEvidence } from "./evidence.ts";
export { acceptOpenings, withdrawOpenings } from "./opening-acts.ts";
export { openingProposal, standingSpan, type OpeningProposal, type OpeningVerdict } from "./proposal.ts";
