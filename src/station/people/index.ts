export { practisingOf, secondsAt } from "./need-second.ts";
export { goOnAlone, nameSecond, tellPractice } from "./second-acts.ts";
export { retireQualification, setQualification } from "./qualification-acts.ts";
