import { formatQuantity, isInputError, parseQuantity, unitsOf, type Dimension, type UnitSystem } from "#base";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { FieldFrame, type FieldWords } from "./field-frame.tsx";
import { isTouched, NumberKeys } from "./number-keys.tsx";

/** A quantity as read: SI, and the text with its unit as the person meant it. */
export interface QuantityReading {
  readonly si: number;
  readonly text: string;
}

export interface QuantityFieldProps extends FieldWords {
  readonly dimension: Dimension;
  /** What stands in the box. Start with "": a reading has no default. */
  readonly value: string;
  /** The text, and the reading where the text is one. */
  readonly onChange: (text: string, reading: QuantityReading | undefined) => void;
  /** Unit a bare number is taken to be in; the person's own usual unit where absent. */
  readonly unit?: string;
  /** Keys of its own stand under the box on touch screens. */
  readonly hasKeys?: boolean;
  /** How a reading is said back; in both systems where left out. */
  readonly sayBack?: (si: number) => string;
}

/** A number with any unit of its dimension. A bare number is in the unit shown beside the box. */
export function QuantityField(props: QuantityFieldProps) {
  const words = useWords("parts");
  const { units } = usePreferences();
  const unit = props.unit ?? usualUnit(props.dimension, units);
  const read = readQuantity(props.value, { dimension: props.dimension, unit }, words);
  const fault = props.fault ?? (props.value !== "" && "fault" in read ? read.fault : undefined);
  const change = (text: string) => {
    const next = readQuantity(text, { dimension: props.dimension, unit }, words);
    props.onChange(text, "reading" in next ? next.reading : undefined);
  };
  return (
    <FieldFrame
      label={props.label}
      {...(props.hint !== undefined && { hint: props.hint })}
      {...(fault !== undefined && { fault })}
      after={
        <>
          {"reading" in read && (
            <p className="field-echo">{words.readAs({ read: sayReading(read.reading.si, props) })}</p>
          )}
          {props.hasKeys && <NumberKeys value={props.value} onChange={change} />}
        </>
      }
    >
      {(ids) => (
        <div className="field-with-unit">
          <input
            className="field-input field-short"
            {...ids}
            inputMode={props.hasKeys && isTouched() ? "none" : "decimal"}
            autoComplete="off"
            value={props.value}
            onChange={(event) => change(event.target.value)}
            maxLength={40}
          />
          <span className="field-unit">{unit}</span>
        </div>
      )}
    </FieldFrame>
  );
}

/** What was understood, in both systems, so that a slip of the unit shows. */
function sayReading(si: number, { dimension, sayBack }: QuantityFieldProps): string {
  if (sayBack) return sayBack(si);
  const metric = formatQuantity(si, dimension, { system: "metric" });
  const us = formatQuantity(si, dimension, { system: "us" });
  return metric === us ? metric : `${metric}, ${us}`;
}

type Read = { readonly reading: QuantityReading } | { readonly fault: string };

/**
 * Reads the text; a bare number takes the unit shown beside the box.
 *
 * @param text - as typed
 * @param box - what the box holds
 * @param words - what is said where the text is no reading
 */
export function readQuantity(
  text: string,
  { dimension, unit }: { readonly dimension: Dimension; readonly unit: string },
  words: Words["parts"],
): Read {
  const bare = /^\s*[+-]?[\d.,]+\s*$/.test(text);
  const whole = bare ? `${text.trim()} ${unit}`.trim() : text.trim();
  try {
    return { reading: { si: parseQuantity(whole, dimension), text: whole } };
  } catch (cause) {
    if (!isInputError(cause)) throw cause;
    return { fault: words.unitFault({ units: symbolsOf(dimension), unit: unit || "none", symbol: unit }) };
  }
}

function symbolsOf(dimension: Dimension): string {
  return unitsOf(dimension)
    .filter((unit) => unit.shownIn !== undefined && unit.symbol !== "")
    .map((unit) => unit.symbol)
    .join(", ");
}

function usualUnit(dimension: Dimension, system: UnitSystem): string {
  const shown = unitsOf(dimension).filter((unit) => unit.shownIn?.includes(system));
  return (shown.find((unit) => (unit.shownFrom ?? 0) > 0) ?? shown[0] ?? unitsOf(dimension)[0]!).symbol;
}
