import { PIN_LENGTH, pinWeakness, type PinWeakness } from "#station";
import type { Words } from "#words";
import { useId, useState } from "react";
import { useWords } from "#web/language/index.ts";
import { FieldFault } from "../parts/fields/field-frame.tsx";
import { Button } from "../parts/index.ts";
import { PinPad } from "./pin-pad.tsx";

export interface NewPin {
  readonly first: string;
  readonly second: string;
}

export const NO_PIN: NewPin = { first: "", second: "" };

/** True once a good PIN has been entered twice. */
export function isPinReady({ first, second }: NewPin): boolean {
  return pinWeakness(first) === undefined && second === first;
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

/** The rule is said under the pad and looked at when going on: the station takes every PIN that gets past here. */
function FirstPad({ value, onChange, onDone }: NewPinPadsProps & { readonly onDone: () => void }) {
  const words = useWords("signIn");
  const [weakness, setWeakness] = useState<PinWeakness>();
  const faultId = useId();
  const enter = (first: string) => {
    setWeakness(undefined);
    onChange({ first, second: "" });
  };
  const goOn = () => {
    const found = pinWeakness(value.first);
    if (found === undefined) onDone();
    else setWeakness(found);
  };
  const fault = weakness && sayPinWeakness(weakness, words);
  return (
    <div className="pin-step">
      <PinPad label={words.newPin()} hint={words.pinRule(PIN_LENGTH)} value={value.first} onChange={enter} />
      <FieldFault id={faultId} fault={fault} />
      <Button onPress={goOn} isDisabled={value.first === ""}>
        {words.pinOnce()}
      </Button>
    </div>
  );
}

function SecondPad({ value, onChange, onStartOver }: NewPinPadsProps & { readonly onStartOver: () => void }) {
  const words = useWords("signIn");
  const isOff = value.second.length >= value.first.length && value.second !== value.first;
  return (
    <div className="pin-step">
      <PinPad label={words.pinAgain()} value={value.second} onChange={(second) => onChange({ ...value, second })} />
      {isOff && <p className="field-fault">{words.pinDiffer()}</p>}
      {isPinReady(value) && <p>{words.pinMatch()}</p>}
      <Button kind="quiet" onPress={onStartOver}>
        {words.pinOver()}
      </Button>
    </div>
  );
}

/** What makes a PIN unfit, and what to do. */
export function sayPinWeakness(weakness: PinWeakness, words: Words["signIn"]): string {
  switch (weakness) {
    case "not figures":
      return words.pinFigures();
    case "too short":
    case "too long":
      return words.pinLength(PIN_LENGTH);
    case "one figure":
      return words.pinSame();
    case "in a row":
      return words.pinRun();
  }
}
