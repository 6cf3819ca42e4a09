/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface SheetWords {
  readonly fuelHazard: () => string;
  readonly fuelStop: () => string;
  readonly fuelStopMore: (d: {
    readonly first: string | number;
    readonly at: string | number;
    readonly person: string | number;
  }) => string;
  readonly fuelPeople: () => string;
  readonly fuelPeopleMore: (d: { readonly first: string | number }) => string;
  readonly fuelWind: () => string;
  readonly fuelWindMore: (d: { readonly first: string | number }) => string;
  readonly nothingStarts: () => string;
  readonly clearBy: () => string;
  readonly wroteClear: () => string;
  readonly foundClear: () => string;
  readonly aboutPeople: () => string;
  readonly aboutBoat: () => string;
  readonly aboutOther: () => string;
  readonly notes: () => string;
  readonly noteLine: (d: {
    readonly at: string | number;
    readonly person: string | number;
    readonly note: string | number;
  }) => string;
  readonly about: () => string;
  readonly note: () => string;
  readonly noteHint: () => string;
  readonly wroteNote: () => string;
  readonly writeNote: () => string;
  readonly goingToHer: () => string;
  readonly herName: () => string;
  readonly leftOut: () => string;
  readonly notOpened: () => string;
  readonly openSheet: () => string;
  readonly timeline: () => string;
  readonly goThrough: () => string;
  readonly timelinePdf: () => string;
  readonly card: () => string;
  readonly goesDark: () => string;
  readonly entries: () => string;
  readonly linesNewest: (d: { readonly count: number }) => string;
  readonly allLines: () => string;
  readonly entriesNewest: () => string;
  readonly what: () => string;
  readonly when: () => string;
  readonly who: () => string;
  readonly strike: () => string;
  readonly strikeLine: (d: { readonly kind: string | number; readonly at: string | number }) => string;
  readonly entryTold: (d: { readonly kind: string | number; readonly told: string | number }) => string;
  readonly struck: (d: { readonly reason: string | number }) => string;
  readonly notWritten: () => string;
  readonly wrote: (d: { readonly what: string | number }) => string;
  readonly undo: () => string;
  readonly undone: () => string;
}
