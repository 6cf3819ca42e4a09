export { practisingOf, secondsAt, secondsSaidAt } from "./need-second.ts";
export { confirmSecond, goOnAlone, nameSecond, tellPractice } from "./second-acts.ts";
export { retireQualification, setQualification } from "./qualification-acts.ts";
export { sayCounts, sayTies, sayWhere, type Naming } from "./practice-words.ts";
export {
  qualificationsOf,
  trainingOf,
  type QualificationStanding,
  type Training,
  type TrainingLine,
} from "./training.ts";
