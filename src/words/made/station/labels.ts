/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface LabelsWords {
  readonly noPlace: () => string;
  readonly noPlaceNews: () => string;
  readonly title: (d: { readonly place: string | number }) => string;
  readonly labels: () => string;
  readonly labelsMore: () => string;
  readonly sheet: () => string;
  readonly used: () => string;
  readonly kitsPdf: () => string;
  readonly shelvesPdf: () => string;
  readonly read: () => string;
  readonly readHint: () => string;
  readonly readNoPlace: () => string;
  readonly shelves: () => string;
  readonly anotherShelf: () => string;
  readonly addShelf: () => string;
  readonly saveShelves: () => string;
  readonly notSaved: () => string;
  readonly onNoShelf: (d: { readonly kits: string | number }) => string;
  readonly before: () => string;
  readonly kitBefore: (d: { readonly kit: string | number }) => string;
  readonly offShelf: () => string;
  readonly kitOffShelf: (d: { readonly kit: string | number }) => string;
  readonly putOn: (d: { readonly shelf: string | number }) => string;
  readonly chooseKit: () => string;
  readonly takeAway: () => string;
  readonly takeNamedAway: (d: { readonly shelf: string | number }) => string;
}
