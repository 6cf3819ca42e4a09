export { holdWords, useWords } from "./use-words.ts";
