import { useState } from "react";
import { useWords } from "../language/index.ts";
import { TextField } from "../parts/index.ts";
import { DateField } from "../parts/fields/date-field.tsx";
import { cardInstant } from "./card-instant.ts";

interface CardDateProps {
  readonly onChange: (at: string | undefined) => void;
  readonly dayLabel: string;
  readonly timeLabel: string;
}

/** When the card was filled in, as its top says: day and time of day. */
export function CardDate({ onChange, dayLabel, timeLabel }: CardDateProps) {
  const words = useWords("parts");
  const [day, setDay] = useState<string>();
  const [time, setTime] = useState("");
  const change = (nextDay: string | undefined, nextTime: string) => {
    setDay(nextDay);
    setTime(nextTime);
    onChange(cardInstant(nextDay, nextTime));
  };
  const fault = time !== "" && cardInstant("2026-01-01", time) === undefined ? words.timeFault() : undefined;
  return (
    <div className="card-date">
      <DateField label={dayLabel} value={day} onChange={(next) => change(next, time)} mayBeMonth={false} />
      <TextField
        label={timeLabel}
        hint={words.timeHint()}
        value={time}
        onChange={(next) => change(day, next)}
        isShort
        {...(fault !== undefined && { fault })}
      />
    </div>
  );
}
