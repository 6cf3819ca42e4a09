export { LEAST_PLANTED, type Drilled, type OpeningEvidence } from "./evidence.ts";
export { acceptOpenings, withdrawOpenings } from "./opening-acts.ts";
export {
  openingProposal,
  standingSpan,
  type OpeningProposal,
  type OpeningVerdict,
  type StatedCosts,
} from "./proposal.ts";
