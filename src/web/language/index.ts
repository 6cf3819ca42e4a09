export { holdWords, useReady, useWords, wordsFor } from "./use-words.ts";
export { withParts } from "./with-parts.ts";
