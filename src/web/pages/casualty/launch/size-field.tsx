import type { UnitSystem } from "#base";
import { useState } from "react";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";

interface SizeFieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly unit: string;
  /** What is wrong with a size as typed [m], in words; undefined where nothing is. */
  readonly faultOf: (si: number) => string | undefined;
  /** How a size is read back [m]; in both systems where left out. */
  readonly sayBack?: (si: number) => string;
  /** Undefined where the text is no size: what was told before does not stand any more. With the text as it stands. */
  readonly onRead: (si: number | undefined, text: string) => void;
}

/** A length typed, held to its limits where it is typed. */
export function SizeField({ label, hint, unit, faultOf, sayBack, onRead }: SizeFieldProps) {
  const [text, setText] = useState("");
  const [si, setSi] = useState<number>();
  const fault = si === undefined ? undefined : faultOf(si);
  return (
    <QuantityField
      label={label}
      {...(hint !== undefined && { hint })}
      dimension="length"
      unit={unit}
      value={text}
      {...(fault !== undefined && { fault })}
      {...(sayBack && { sayBack })}
      onChange={(next, reading) => {
        setText(next);
        setSi(reading?.si);
        onRead(reading?.si, next);
      }}
    />
  );
}

/** Lengths of boats are told in metres or feet. */
export function boatUnit(units: UnitSystem): string {
  return units === "metric" ? "m" : "ft";
}
