import { useState } from "react";
import { PinPad } from "./pin-pad.tsx";

export interface NewPin {
  readonly first: string;
  readonly second: string;
}

export const NO_PIN: NewPin = { first: "", second: "" };

/** What stands in the way of a new PIN; undefined where nothing does. */
export function faultOfPin({ first, second }: NewPin): string | undefined {
  if (first.length < 6) return "A PIN has 6 to 12 figures.";
  if (/^(\d)\1+$/.test(first)) return "A PIN of one figure over and over is the first that others try.";
  if (second !== "" && second !== first) return "The two are not the same.";
  return second === "" ? "Enter it once more." : undefined;
}

/** A new PIN, entered twice on one pad after the other. */
export function NewPinPads({ value, onChange }: { readonly value: NewPin; readonly onChange: (pin: NewPin) => void }) {
  const [isSecond, setSecond] = useState(false);
  const fault = faultOfPin(value);
  const change = (first: string) => onChange({ first, second: "" });
  return (
    <>
      <PinPad
        label="New PIN"
        hint="6 to 12 figures. Not a birthday, not the station's telephone."
        value={value.first}
        onChange={change}
      />
      {(isSecond || value.first.length >= 6) && (
        <PinPad
          label="The same PIN once more"
          value={value.second}
          onChange={(second) => {
            setSecond(true);
            onChange({ ...value, second });
          }}
        />
      )}
      {value.first !== "" && fault !== undefined && <p className="field-fault">{fault}</p>}
    </>
  );
}
