export { cohensKappa, type Kappa } from "./cohens-kappa.ts";
export { chanceToSee, sampleToSee, type SampleSize } from "./sample-to-see.ts";
