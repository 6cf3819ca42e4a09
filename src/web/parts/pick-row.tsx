import type { ReactNode } from "react";
import { useNewLook } from "./look/use-new-look.ts";
import { wordsOf } from "./look/words-of.ts";
import "./picks.css";

interface PickRowProps<Id extends string> {
  readonly label: string;
  readonly hint?: string;
  readonly options: readonly { readonly id: Id; readonly words: ReactNode }[];
  readonly picked: Id | undefined;
  readonly onPick: (id: Id) => void;
}

/** A few answers side by side, each big enough for a wet thumb; a tap answers, once they could be read. */
export function PickRow<Id extends string>({ label, hint, options, picked, onPick }: PickRowProps<Id>) {
  const { isNew, takes } = useNewLook([label, ...options.map(({ words }) => wordsOf(words))].join(" "));
  return (
    <fieldset className="picks">
      <legend className="field-label">{label}</legend>
      {hint !== undefined && <p className="field-hint">{hint}</p>}
      <div className="picks-row" data-count={options.length}>
        {options.map(({ id, words }) => (
          <button
            key={id}
            type="button"
            className={isNew ? "pick button-new" : "pick"}
            aria-pressed={id === picked}
            {...(isNew && { "aria-disabled": true })}
            onClick={() => takes() && onPick(id)}
          >
            {words}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
