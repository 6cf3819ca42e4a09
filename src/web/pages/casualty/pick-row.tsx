import type { ReactNode } from "react";
import "./picks.css";

interface PickRowProps<Id extends string> {
  readonly label: string;
  readonly hint?: string;
  readonly options: readonly { readonly id: Id; readonly words: ReactNode }[];
  readonly picked: Id | undefined;
  readonly onPick: (id: Id) => void;
}

/** A few answers side by side, each big enough for a wet thumb; a tap answers. */
export function PickRow<Id extends string>({ label, hint, options, picked, onPick }: PickRowProps<Id>) {
  return (
    <fieldset className="picks">
      <legend className="field-label">{label}</legend>
      {hint !== undefined && <p className="field-hint">{hint}</p>}
      <div className="picks-row" data-count={options.length}>
        {options.map(({ id, words }) => (
          <button key={id} type="button" className="pick" aria-pressed={id === picked} onClick={() => onPick(id)}>
            {words}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
