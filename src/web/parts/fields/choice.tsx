import type { ReactNode } from "react";
import { FieldError, Label, Radio, RadioGroup, Text } from "react-aria-components";
import "./field.css";

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly label: ReactNode; readonly note?: string }[];
  /** Undefined until the person has chosen: there is no default on a reading. */
  readonly value: Value | undefined;
  readonly onChange: (value: Value) => void;
  readonly hint?: string;
  readonly fault?: string;
  /** Bigger and further apart, for gloves. */
  readonly glove?: boolean;
}

/** One of a few, each a whole line to tap. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, options, value, onChange, hint, fault, glove = false } = props;
  return (
    <RadioGroup
      className={glove ? "field choice-glove" : "field"}
      value={value ?? null}
      onChange={(chosen) => onChange(chosen as Value)}
      isInvalid={fault !== undefined}
    >
      <Label className="field-label">{label}</Label>
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      <div className="choice-options">
        {options.map((option) => (
          <Radio key={option.value} value={option.value} className="choice-option">
            <span>
              {option.label}
              {option.note !== undefined && <span className="choice-note">{option.note}</span>}
            </span>
          </Radio>
        ))}
      </div>
      {fault !== undefined && <FieldError className="field-fault">{fault}</FieldError>}
    </RadioGroup>
  );
}
