/** A pattern's file as a server hands it from one to the other, with the files that stand beside it. */
export interface WrittenPattern {
  /** The YAML, as it was written. */
  readonly text: string;
  /** Text of the files in the folder ID@VERSION beside it, by name: its drawings. */
  readonly beside: Readonly<Record<string, string>>;
}

/** A version that a person issued to the station. */
export interface IssuedPattern extends WrittenPattern {
  readonly id: string;
  readonly version: number;
  /** Person who issued it. */
  readonly by: string;
  /** RFC 3339. */
  readonly at: string;
}

/** A draft that a person laid out for the station's devices, to be walked before it is issued. One a person. */
export interface LaidOutDraft extends WrittenPattern {
  readonly by: string;
  readonly at: string;
}

/**
 * Where the servers of a station share what was issued and laid out. One contract suite
 * (`test/contracts/pattern-shelf`) runs over every implementation.
 */
export interface PatternShelf {
  /** Keeps an issued version for good; false where this id and version stand here already, by whichever server. */
  issue(pattern: IssuedPattern): Promise<boolean>;
  /** Which versions were issued, in order of id and version. */
  issued(): Promise<readonly Pick<IssuedPattern, "id" | "version">[]>;
  issuedPattern(id: string, version: number): Promise<IssuedPattern | undefined>;
  /** Lays a draft out in place of the one that this person had laid out before. */
  layOut(draft: LaidOutDraft): Promise<void>;
  /** Drafts laid out, by person. */
  laidOut(): Promise<readonly LaidOutDraft[]>;
  takeIn(by: string): Promise<void>;
}

/** A server's store, which keeps issued patterns too. */
export interface HasPatterns {
  readonly patternShelf: PatternShelf;
}
