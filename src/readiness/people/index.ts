export { isFor, neededFor, stepsFor, type AtStage, type Qualification } from "./qualification.ts";
export { secondOf, type Doing as QualifiedDoing } from "./doings.ts";
export {
  isOn,
  practiceOf,
  type Counts,
  type Holding,
  type JudgedDoing,
  type PracticeBook,
  type Practised,
  type Practising,
} from "./practice.ts";
export { toBringOn, type ToBringOn } from "./bring-on.ts";
