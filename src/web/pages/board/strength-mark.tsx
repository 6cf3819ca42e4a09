/** A place's strength in words, with a shape for enough or short. */
export function StrengthMark({ isShort, words }: { readonly isShort: boolean; readonly words: string }) {
  return (
    <span className={isShort ? "strength strength-short" : "strength"}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {isShort ? <path d="M10 2 19 18H1zM10 8v5M10 15v1.5" /> : <path d="M2 10.5l5.5 5.5L18 4.5" />}
      </svg>
      {words}
    </span>
  );
}
