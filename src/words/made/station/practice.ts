/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PracticeWords {
  readonly sheet: () => string;
  readonly stageOfEvery: (d: { readonly stage: string | number }) => string;
  readonly stageOf: (d: { readonly stage: string | number; readonly pattern: string | number }) => string;
  readonly lineOf: (d: { readonly line: string | number; readonly pattern: string | number }) => string;
  readonly stepOf: (d: { readonly step: string | number; readonly pattern: string | number }) => string;
  readonly onSheet: (d: { readonly casualty: string | number }) => string;
  readonly before: () => string;
  readonly held: () => string;
  readonly seenBy: (d: { readonly name: string | number }) => string;
  readonly toldBy: (d: { readonly name: string | number }) => string;
  readonly toldAndSeen: (d: { readonly told: string | number; readonly seen: string | number }) => string;
  readonly notCounted: (d: { readonly why: string | number }) => string;
  readonly nobodyNamed: () => string;
  readonly goneAlone: (d: { readonly note: string | number }) => string;
}
