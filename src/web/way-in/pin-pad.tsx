import { useId } from "react";
import { useWords } from "#web/language/index.ts";
import { Button } from "../parts/index.ts";
import "./sign-in.css";

export interface PinPadProps {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onChange: (pin: string) => void;
}

const KEYS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;
const MOST_FIGURES = 12;

/** A PIN by gloved taps or by keyboard. The keys stand apart and never move. */
export function PinPad({ label, hint, value, onChange }: PinPadProps) {
  const id = useId();
  const words = useWords("signIn");
  const press = (figure: string) => onChange((value + figure).slice(0, MOST_FIGURES));
  return (
    <div className="pin">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {hint !== undefined && <p className="field-hint">{hint}</p>}
      <input
        id={id}
        className="field-input pin-shown"
        type="password"
        inputMode="numeric"
        autoComplete="off"
        value={value}
        onChange={(event) => onChange(event.target.value.replaceAll(/\D/g, "").slice(0, MOST_FIGURES))}
      />
      <fieldset className="pin-keys" aria-label={words.keysFor({ field: label })}>
        {KEYS.map((figure) => (
          <PinKey key={figure} words={figure} onPress={() => press(figure)} />
        ))}
        <PinKey words={words.clear()} onPress={() => onChange("")} />
        <PinKey words="0" onPress={() => press("0")} />
        <PinKey words={words.undo()} label={words.undoFigure()} onPress={() => onChange(value.slice(0, -1))} />
      </fieldset>
    </div>
  );
}

interface PinKeyProps {
  readonly words: string;
  readonly label?: string;
  readonly onPress: () => void;
}

function PinKey({ words, label = words, onPress }: PinKeyProps) {
  return (
    <Button isQuick onPress={onPress} label={label}>
      {words}
    </Button>
  );
}
