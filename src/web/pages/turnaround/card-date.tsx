import { useState } from "react";
import { DateField, TextField } from "../../parts/index.ts";
import { cardInstant } from "./card-instant.ts";

/** When the card was filled in, as its top says: day and time of day. */
export function CardDate({ onChange }: { readonly onChange: (at: string | undefined) => void }) {
  const [day, setDay] = useState<string>();
  const [time, setTime] = useState("");
  const change = (nextDay: string | undefined, nextTime: string) => {
    setDay(nextDay);
    setTime(nextTime);
    onChange(cardInstant(nextDay, nextTime));
  };
  const fault = time !== "" && cardInstant("2026-01-01", time) === undefined ? "Write it as 14:05." : undefined;
  return (
    <div className="card-date">
      <DateField
        label="Day on the card"
        value={day}
        onChange={(next) => change(next, time)}
        mayBeMonth={false}
        hint="As written on the card."
      />
      <TextField
        label="Time on the card"
        hint="As 14:05."
        value={time}
        onChange={(next) => change(day, next)}
        isShort
        {...(fault !== undefined && { fault })}
      />
    </div>
  );
}
