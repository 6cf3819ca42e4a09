import { useState } from "react";
import { Button } from "../../parts/index.ts";
import { PinPad } from "./pin-pad.tsx";

export interface NewPin {
  readonly first: string;
  readonly second: string;
}

export const NO_PIN: NewPin = { first: "", second: "" };

/** What stands in the way of a PIN; undefined where nothing does. The station refuses more that anyone would guess. */
export function faultOfFirst(pin: string): string | undefined {
  if (pin.length < 6) return "A PIN has 6 to 12 figures.";
  return /^(\d)\1+$/.test(pin) ? "A PIN of one figure over and over is the first that others try." : undefined;
}

/** True once a good PIN has been entered twice. */
export function isPinReady({ first, second }: NewPin): boolean {
  return faultOfFirst(first) === undefined && second === first;
}

interface NewPinPadsProps {
  readonly value: NewPin;
  readonly onChange: (pin: NewPin) => void;
}

/** A new PIN, entered twice: one pad at a time. */
export function NewPinPads({ value, onChange }: NewPinPadsProps) {
  const [isSecond, setSecond] = useState(false);
  const startOver = () => {
    setSecond(false);
    onChange(NO_PIN);
  };
  return isSecond ? (
    <SecondPad value={value} onChange={onChange} onStartOver={startOver} />
  ) : (
    <FirstPad value={value} onChange={onChange} onDone={() => setSecond(true)} />
  );
}

function FirstPad({ value, onChange, onDone }: NewPinPadsProps & { readonly onDone: () => void }) {
  const fault = faultOfFirst(value.first);
  return (
    <div className="pin-step">
      <PinPad
        label="New PIN"
        hint="6 to 12 figures. Not a birthday, not the station's telephone."
        value={value.first}
        onChange={(first) => onChange({ first, second: "" })}
      />
      {value.first.length >= 6 && fault !== undefined && <p className="field-fault">{fault}</p>}
      <Button onPress={onDone} isDisabled={fault !== undefined}>
        Go on: enter it once more
      </Button>
    </div>
  );
}

function SecondPad({ value, onChange, onStartOver }: NewPinPadsProps & { readonly onStartOver: () => void }) {
  const isOff = value.second.length >= value.first.length && value.second !== value.first;
  return (
    <div className="pin-step">
      <PinPad
        label="The same PIN once more"
        value={value.second}
        onChange={(second) => onChange({ ...value, second })}
      />
      {isOff && <p className="field-fault">The two are not the same.</p>}
      {isPinReady(value) && <p>Both are the same.</p>}
      <Button kind="quiet" onPress={onStartOver}>
        Start over with another PIN
      </Button>
    </div>
  );
}
