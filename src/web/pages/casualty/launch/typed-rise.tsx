import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { isRiseTold, sayRise } from "./sizes.ts";

interface TypedRiseProps {
  /** [m/s]; below 0 where it falls, undefined where the text is no rise. */
  readonly onRead: (si: number | undefined, isRefused: boolean) => void;
}

/** How fast the water rises, as somebody says it. One that cannot be is not told on. */
export function TypedRise({ onRead }: TypedRiseProps) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  const [{ text, si }, setTyped] = useState<{ readonly text: string; readonly si?: number }>({ text: "" });
  const isOff = si !== undefined && !isRiseTold(si);
  return (
    <QuantityField
      label={words.riseTyped()}
      hint={words.riseTypedHint()}
      dimension="speed"
      unit={units === "metric" ? "cm/min" : "in/min"}
      value={text}
      {...(isOff && { fault: `${words.riseLimits()} ${words.notCounted()}` })}
      sayBack={(read) => sayRise(read, units, words)}
      onChange={(next, reading) => {
        setTyped({ text: next, ...(reading && { si: reading.si }) });
        const read = reading && isRiseTold(reading.si) ? reading.si : undefined;
        onRead(read, read === undefined && next.trim() !== "");
      }}
    />
  );
}
