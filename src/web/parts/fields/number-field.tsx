import { useState } from "react";
import { FieldFrame, type FieldWords } from "./field-frame.tsx";

export interface NumberFieldProps extends FieldWords {
  /** Undefined while empty or not a number: there is no default. */
  readonly value: number | undefined;
  /** The number; and whether something stands there that is none, or out of bounds. */
  readonly onChange: (value: number | undefined, isRefused: boolean) => void;
  /** Whole numbers only (default). */
  readonly isWhole?: boolean;
  readonly least?: number;
  readonly most?: number;
}

/** A bare number, such as a count. */
export function NumberField(props: NumberFieldProps) {
  const [text, setText] = useState(props.value === undefined ? "" : String(props.value));
  const fault = props.fault ?? (text === "" ? undefined : faultOf(text, props));
  const change = (next: string) => {
    setText(next);
    const isEmpty = next.trim() === "";
    const isRefused = !isEmpty && faultOf(next, props) !== undefined;
    props.onChange(isEmpty || isRefused ? undefined : toNumber(next), isRefused);
  };
  return (
    <FieldFrame
      label={props.label}
      {...(props.hint !== undefined && { hint: props.hint })}
      {...(fault !== undefined && { fault })}
    >
      {(ids) => (
        <input
          className="field-input field-short"
          {...ids}
          inputMode={(props.isWhole ?? true) ? "numeric" : "decimal"}
          autoComplete="off"
          value={text}
          onChange={(event) => change(event.target.value)}
          maxLength={20}
        />
      )}
    </FieldFrame>
  );
}

function toNumber(text: string): number {
  return Number(text.trim().replace(",", "."));
}

function faultOf(text: string, { isWhole = true, least, most }: NumberFieldProps): string | undefined {
  const number = toNumber(text);
  if (!Number.isFinite(number)) return "Write a number, in digits.";
  if (isWhole && !Number.isInteger(number)) return "Write a whole number.";
  if (least !== undefined && number < least) return `Write ${least} or more.`;
  if (most !== undefined && number > most) return `Write ${most} or less.`;
  return undefined;
}
