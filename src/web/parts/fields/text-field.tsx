import type { HTMLInputAutoCompleteAttribute, HTMLInputTypeAttribute } from "react";
import { useWords } from "#web/language/index.ts";
import { FieldFrame, type FieldWords } from "./field-frame.tsx";

export interface TextFieldProps extends FieldWords {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** A box of several lines. */
  readonly isLong?: boolean;
  /** For a few characters: a seal number, a code. */
  readonly isShort?: boolean;
  readonly type?: Extract<HTMLInputTypeAttribute, "text" | "password" | "search">;
  readonly autoComplete?: HTMLInputAutoCompleteAttribute;
  readonly inputMode?: "text" | "numeric";
  /** Greatest number of characters. */
  readonly limit?: number;
}

/** Words typed by the person. Starts empty where it is a reading. Says so once it takes no more. */
export function TextField(props: TextFieldProps) {
  const { value, onChange, isLong = false, isShort = false, limit = isLong ? 2000 : 200 } = props;
  const change = (event: { readonly target: { readonly value: string } }) => onChange(event.target.value);
  const words = useWords("parts");
  const full = value.length >= limit && !isShort && <output className="field-hint">{words.textFull({ limit })}</output>;
  return (
    <FieldFrame {...props} after={full}>
      {(ids) =>
        isLong ? (
          <textarea className="field-input" {...ids} value={value} onChange={change} maxLength={limit} />
        ) : (
          <input
            className={isShort ? "field-input field-short" : "field-input"}
            {...ids}
            type={props.type ?? "text"}
            inputMode={props.inputMode ?? "text"}
            autoComplete={props.autoComplete ?? "off"}
            value={value}
            onChange={change}
            maxLength={limit}
          />
        )
      }
    </FieldFrame>
  );
}
