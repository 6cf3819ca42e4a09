import { PIN_RULE, pinWeakness } from "#station";
import { useId, useState } from "react";
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
  const [weakness, setWeakness] = useState<string>();
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
  const fault = weakness && `This PIN has ${weakness}. Choose another.`;
  return (
    <div className="pin-step">
      <PinPad
        label="New PIN"
        hint={`${PIN_RULE}. Not a birthday, not the station's telephone.`}
        value={value.first}
        onChange={enter}
      />
      <FieldFault id={faultId} fault={fault} />
      <Button onPress={goOn} isDisabled={value.first === ""}>
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
