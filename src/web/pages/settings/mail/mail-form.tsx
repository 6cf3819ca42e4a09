import type { MailWishRequest } from "#station";
import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, TextField } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";

interface MailFormProps {
  readonly wish: MailWishRequest | undefined;
  readonly isBusy: boolean;
  readonly onSave: (wish: MailWishRequest) => void;
}

const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
const NEVER = "0";
/** An hour at which people read mail. */
const FIRST_HOUR = 8;

/** Where a person reads mail, and what they want to find there. */
export function MailForm({ wish, isBusy, onSave }: MailFormProps) {
  const words = useWords("settingsMail");
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
      <TextField label={words.address()} hint={words.addressHint()} value={address} onChange={setAddress} limit={254} />
      <Choice
        label={words.weekly()}
        value={weekday}
        onChange={setWeekday}
        options={[
          { value: NEVER, label: words.notByMail() },
          ...WEEKDAYS.map((day, at) => ({ value: String(at + 1), label: words[day]() })),
        ]}
      />
      {isWeekly && <NumberField label={words.hour()} value={hour} onChange={setHour} least={0} most={23} />}
      <AtOnce label={words.forShort()} isWanted={isForShort} onChange={setForShort} />
      <AtOnce label={words.forGrounds()} isWanted={isForGrounds} onChange={setForGrounds} />
      <div>
        <Button onPress={save} isDisabled={!isReady} isBusy={isBusy}>
          {words.save()}
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
  const words = useWords("settingsMail");
  return (
    <Choice
      label={label}
      value={isWanted ? "at-once" : "not"}
      onChange={(chosen) => onChange(chosen === "at-once")}
      options={[
        { value: "not", label: words.notByMail() },
        { value: "at-once", label: words.atOnce() },
      ]}
    />
  );
}
