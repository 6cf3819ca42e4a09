import type { MailWishRequest } from "#station";
import { useState } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";

interface MailFormProps {
  readonly wish: MailWishRequest | undefined;
  readonly isBusy: boolean;
  readonly onSave: (wish: MailWishRequest) => void;
}

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const NEVER = "0";
/** An hour at which people read mail. */
const FIRST_HOUR = 8;

/** Where a person reads mail, and what they want to find there. */
export function MailForm({ wish, isBusy, onSave }: MailFormProps) {
  const [address, setAddress] = useState(wish?.address ?? "");
  const [weekday, setWeekday] = useState(String(wish?.weekly?.weekday ?? NEVER));
  const [hour, setHour] = useState<number | undefined>(wish?.weekly?.hour ?? FIRST_HOUR);
  const [isForShort, setForShort] = useState(wish?.isForShort ?? false);
  const [isForGrounds, setForGrounds] = useState(wish?.isForGrounds ?? false);
  const isWeekly = weekday !== NEVER;
  const isReady = address.trim() !== "" && (!isWeekly || hour !== undefined);
  const save = () => {
    const weekly = isWeekly && hour !== undefined ? { weekly: { weekday: Number(weekday), hour } } : {};
    onSave({ address: address.trim(), ...weekly, isForShort, isForGrounds });
  };
  return (
    <>
      <TextField
        label="Your address for mail"
        hint="Nobody else at the station sees it. Nothing is sent without one."
        value={address}
        onChange={setAddress}
        limit={254}
      />
      <Choice
        label="What is due, once a week"
        value={weekday}
        onChange={setWeekday}
        options={[
          { value: NEVER, label: "Not by mail" },
          ...WEEKDAYS.map((label, at) => ({ value: String(at + 1), label })),
        ]}
      />
      {isWeekly && <NumberField label="At this hour, 0 to 23" value={hour} onChange={setHour} least={0} most={23} />}
      <AtOnce label="A place falls short of its strength" isWanted={isForShort} onChange={setForShort} />
      <AtOnce label="A finding grounds a kit" isWanted={isForGrounds} onChange={setForGrounds} />
      <div>
        <Button onPress={save} isDisabled={!isReady} isBusy={isBusy}>
          Save what I am told by mail
        </Button>
      </div>
    </>
  );
}

interface AtOnceProps {
  readonly label: string;
  readonly isWanted: boolean;
  readonly onChange: (isWanted: boolean) => void;
}

function AtOnce({ label, isWanted, onChange }: AtOnceProps) {
  return (
    <Choice
      label={label}
      value={isWanted ? "at-once" : "not"}
      onChange={(chosen) => onChange(chosen === "at-once")}
      options={[
        { value: "not", label: "Not by mail" },
        { value: "at-once", label: "Tell me at once" },
      ]}
    />
  );
}
