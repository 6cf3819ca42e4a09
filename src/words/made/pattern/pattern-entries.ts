/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface PatternEntriesWords {
  readonly machines: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly places: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly markings: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly items: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly modes: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly forbids: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly provedBy: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly checks: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly finds: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly behind: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly stages: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly steps: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly oneLook: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly stows: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly renews: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly hazards: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly does: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly cautions: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly tools: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly after: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly curve: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly npshRequired: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly burn: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly met: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly firstAid: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly flushedBy: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly counted: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly troubles: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly causes: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly tries: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly ends: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly briefing: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly readByNative: (d: { readonly how: "head" | (string & {}) }) => string;
  readonly words: (d: { readonly how: "head" | (string & {}) }) => string;
}
