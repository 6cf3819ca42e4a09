export { believableOf, type Believable, type ImpossibleSounding } from "./believable.ts";
export { LEAST_LIFT, USUAL_LIFT } from "./lifts.ts";
export { sayPage } from "./say-page.ts";
export {
  instantOn,
  lastKnownQuestion,
  nextSoundingQuestion,
  pumpKey,
  secondsOn,
  sheetQuestion,
  spaceAt,
} from "./sheet-question.ts";
