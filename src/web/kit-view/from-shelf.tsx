import { inWords } from "#words";
import { useId } from "react";
import { useWords } from "../language/index.ts";
import "./from-shelf.css";
import type { Source } from "./stock-view.ts";

interface FromShelfProps {
  readonly sources: readonly Source[];
  /** Key of a source; undefined until one is chosen. */
  readonly value: string | undefined;
  readonly onChange: (key: string | undefined) => void;
}

/** Where the new one comes from. Nothing is shown for an item without a part. */
export function FromShelf({ sources, value, onChange }: FromShelfProps) {
  const words = useWords("kitView");
  const id = useId();
  const chosen = sources.find(({ key }) => key === value);
  if (sources.length === 0) return null;
  return (
    <label className="field" htmlFor={id}>
      <span className="field-label">{words.shelfAsked()}</span>
      <select
        id={id}
        className="field-input"
        value={value ?? ""}
        onChange={({ target }) => onChange(target.value === "" ? undefined : target.value)}
      >
        {value === undefined && <option value="">{words.chooseLot()}</option>}
        {sources.map(({ key, said }) => (
          <option key={key} value={key}>
            {inWords(said, words)}
          </option>
        ))}
      </select>
      {chosen && <span className="field-hint from-shelf-whole">{inWords(chosen.said, words)}</span>}
    </label>
  );
}
