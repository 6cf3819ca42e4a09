export type { HasPatterns, IssuedPattern, LaidOutDraft, WrittenPattern, PatternShelf } from "./pattern-shelf.ts";
