import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { FieldFrame } from "#web/parts/fields/field-frame.tsx";
import { Button } from "#web/parts/index.ts";
import { readQuantity } from "#web/parts/fields/quantity-field.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { isOnScale, sayStep, stepBy, stepFault, type Steps } from "./stepping.ts";

export interface StepperProps {
  readonly label: string;
  readonly hint?: string;
  readonly steps: Steps;
  /** SI */
  readonly value: number;
  readonly onChange: (si: number) => void;
}

/** A quantity set by taps with gloves on, or typed with any unit. */
export function Stepper({ label, hint, steps, value, onChange }: StepperProps) {
  const words = useWords("delivery");
  const parts = useWords("parts");
  const { units } = usePreferences();
  const [typed, setTyped] = useState<string>();
  const { unit } = steps[units];
  const fault = typed === undefined ? undefined : faultOf(typed, steps, units, { words, parts });
  const type = (text: string) => {
    setTyped(text);
    const read = readQuantity(text, { dimension: steps.dimension, unit }, parts);
    if ("reading" in read && isOnScale(read.reading.si, steps)) onChange(read.reading.si);
  };
  const step = (direction: 1 | -1) => {
    setTyped(undefined);
    onChange(stepBy(value, steps, units, direction));
  };
  return (
    <FieldFrame label={label} {...(hint !== undefined && { hint })} {...(fault !== undefined && { fault })}>
      {(ids) => (
        <div className="stepper">
          <StepButton
            label={words.less({ label })}
            sign={"\u2212"}
            isEnd={value <= steps.least}
            onPress={() => step(-1)}
          />
          <input
            className="field-input stepper-input"
            {...ids}
            inputMode="decimal"
            autoComplete="off"
            maxLength={40}
            value={typed ?? sayStep(value, steps, units)}
            onFocus={(event) => event.target.select()}
            onChange={(event) => type(event.target.value)}
            onBlur={() => setTyped(undefined)}
          />
          <StepButton label={words.more({ label })} sign="+" isEnd={value >= steps.most} onPress={() => step(1)} />
        </div>
      )}
    </FieldFrame>
  );
}

interface FaultWords {
  readonly words: Words["delivery"];
  readonly parts: Words["parts"];
}

function faultOf(text: string, steps: Steps, units: "metric" | "us", { words, parts }: FaultWords): string | undefined {
  const read = readQuantity(text, { dimension: steps.dimension, unit: steps[units].unit }, parts);
  return "fault" in read ? read.fault : stepFault(read.reading.si, steps, units, words);
}

interface StepButtonProps {
  readonly label: string;
  readonly sign: string;
  readonly isEnd: boolean;
  readonly onPress: () => void;
}

function StepButton({ label, sign, isEnd, onPress }: StepButtonProps) {
  return (
    <Button isQuick label={label} isDisabled={isEnd} onPress={onPress}>
      <span className="stepper-sign" aria-hidden="true">
        {sign}
      </span>
    </Button>
  );
}

export interface CountStepperProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** "2 pumps" */
  readonly say: (value: number) => string;
  readonly onChange: (value: number) => void;
}

/** A small count, set by taps. */
export function CountStepper({ label, value, least, most, say, onChange }: CountStepperProps) {
  const words = useWords("delivery");
  return (
    <fieldset className="field">
      <legend className="field-label">{label}</legend>
      <div className="stepper">
        <StepButton
          label={words.less({ label })}
          sign={"\u2212"}
          isEnd={value <= least}
          onPress={() => onChange(value - 1)}
        />
        <output className="stepper-count">{say(value)}</output>
        <StepButton label={words.more({ label })} sign="+" isEnd={value >= most} onPress={() => onChange(value + 1)} />
      </div>
    </fieldset>
  );
}
