export { CasualtyJoiner, mergeLines, sheetIds } from "./join-casualties.ts";
