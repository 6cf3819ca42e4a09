export { sayAsRead, type QuantityRead } from "./as-read.ts";
export { sayProse } from "./prose.ts";
export { chanceEnds, hundredthsOf, sayChance, sayPercent, type ChanceStyle } from "./chance.ts";
export { sayDuration, type DurationStyle } from "./duration.ts";
export { flowFigure, flowUnit, sayFlow, sayFlowSpread, type FlowStyle } from "./flow.ts";
export {
  aboutLevel,
  levelUnit,
  sayLength,
  sayLevel,
  sayLevelAbout,
  type LengthStyle,
  type LevelUnit,
} from "./length.ts";
export { ENGLISH } from "./english.ts";
export { dayToSay, inWords, spanToSay, type Saying } from "./saying.ts";
export { sayLimit } from "./limit.ts";
export { sayVolume, volumeIn, type VolumeStyle } from "./volume.ts";
export {
  fetchWords,
  isSpeech,
  LANGUAGES,
  tagOf,
  WHOLE_LANGUAGES,
  type Language,
  type Speech,
  type WordGroup,
} from "./language.ts";
export type { Words } from "./made/index.ts";
