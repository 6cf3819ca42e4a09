import type { VerdictWords } from "../word/verdict-words.ts";

/** Falling, level, rising water, a warning: a shape of its own for each, so that colour is not needed. */
export function VerdictShape({ kind }: { readonly kind: VerdictWords["kind"] }) {
  return (
    <svg className="verdict-shape" viewBox="0 0 32 32" aria-hidden="true">
      <path d={SHAPES[kind]} fill="currentColor" fillRule="evenodd" />
    </svg>
  );
}

const SHAPES: Readonly<Record<VerdictWords["kind"], string>> = {
  gaining: "M13 3h6v14h7L16 30 6 17h7z",
  holding: "M3 11h26v4H3zM3 18h26v4H3z",
  losing: "M13 29h6V15h7L16 2 6 15h7z",
  unknown: "M4 4h24v24H4zM8 8v16h16V8z",
  leave: "M16 2 31 29H1zM14 11v9h4v-9zM14 22v4h4v-4z",
  fuel: "M16 2 31 29H1zM14 11v9h4v-9zM14 22v4h4v-4z",
};
