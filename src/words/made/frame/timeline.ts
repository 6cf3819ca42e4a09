/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface TimelineWords {
  readonly noCasualty: () => string;
  readonly noCasualtyNews: () => string;
  readonly title: (d: { readonly casualty: string | number }) => string;
  readonly pdf: () => string;
  readonly lines: () => string;
  readonly linesMore: () => string;
  readonly opened: () => string;
  readonly closed: () => string;
  readonly by: (d: { readonly at: string | number; readonly person: string | number }) => string;
  readonly notClosed: () => string;
  readonly position: () => string;
  readonly notTold: () => string;
  readonly writtenBy: () => string;
  readonly linesBy: (d: { readonly count: number; readonly person: string | number }) => string;
  readonly running: () => string;
  readonly neverRan: () => string;
  readonly ran: (d: { readonly duration: string | number }) => string;
  readonly left: (d: { readonly count: number }) => string;
  readonly when: () => string;
  readonly what: () => string;
  readonly who: () => string;
  readonly said: () => string;
  readonly computing: () => string;
  readonly nothingNew: () => string;
  readonly notComputed: () => string;
}
