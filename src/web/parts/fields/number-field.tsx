import { useState } from "react";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("parts");
  const [text, setText] = useState(props.value === undefined ? "" : String(props.value));
  const fault = props.fault ?? (text === "" ? undefined : faultOf(text, props, words));
  const change = (next: string) => {
    setText(next);
    const isEmpty = next.trim() === "";
    const isRefused = !isEmpty && faultOf(next, props, words) !== undefined;
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

function faultOf(
  text: string,
  { isWhole = true, least, most }: NumberFieldProps,
  words: Words["parts"],
): string | undefined {
  const number = toNumber(text);
  if (!Number.isFinite(number)) return words.numberFault();
  if (isWhole && !Number.isInteger(number)) return words.wholeFault();
  if (least !== undefined && number < least) return words.leastFault({ least });
  if (most !== undefined && number > most) return words.mostFault({ most });
  return undefined;
}
