export { faultQuestion } from "./fault.ts";
export { symptomsQuestion } from "./symptoms.ts";
