import { useState, type FormEvent } from "react";
import { useThisDevice } from "../../device/index.ts";
import { Button, Page, Section, TextField } from "../../parts/index.ts";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { useDeviceName } from "../sign-in/device-name.ts";
import { EntryRefused } from "../../way-in/entry-refused.tsx";
import { isPinReady, NewPinPads, NO_PIN } from "../../way-in/new-pin.tsx";
import { useEntering } from "../../way-in/use-entering.ts";
import "../../way-in/sign-in.css";

const EMPTY = { code: "", stationName: "", name: "", place: "" };

/** Makes an empty station's first administrator and first place. */
export default function SetUpPage() {
  const device = useThisDevice();
  const entering = useEntering();
  const [words, setWords] = useState(EMPTY);
  const [strength, setStrength] = useState<number>();
  const [zone, setZone] = useState(() => new Intl.DateTimeFormat().resolvedOptions().timeZone);
  const [pin, setPin] = useState(NO_PIN);
  const [deviceName, setDeviceName] = useDeviceName();
  const isReady =
    [...Object.values(words), zone, deviceName].every((text) => text.trim() !== "") &&
    strength !== undefined &&
    isPinReady(pin);
  const field = (name: keyof typeof EMPTY) => ({
    value: words[name],
    onChange: (text: string) => setWords({ ...words, [name]: text }),
    limit: 80,
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isReady) return;
    const place = { name: words.place.trim(), strength: strength ?? 0, zone: zone.trim() };
    const who = { code: words.code.trim(), stationName: words.stationName.trim(), name: words.name.trim() };
    const from = { device: device.id, deviceName: deviceName.trim() };
    void entering.enter(() => device.desk.setUp({ ...who, pin: pin.first, place, ...from }));
  };
  return (
    <Page title="Set up this station" frame="full">
      <p>This station is empty. Whoever holds the code from the terminal becomes its first administrator.</p>
      <form className="sign-in-form" onSubmit={submit}>
        <TextField label="Code from the terminal" {...field("code")} />
        <Section title="The station">
          <TextField label="Name of the station" {...field("stationName")} />
          <TextField
            label="Its first place"
            hint="Where kits are kept: a boat room, a boat, a store."
            {...field("place")}
          />
          <NumberField
            label="How many kits must be ready there"
            hint="0 where nothing is asked of it."
            value={strength}
            onChange={setStrength}
            least={0}
            most={1000}
          />
          <TextField label="Time zone whose day counts there" value={zone} onChange={setZone} limit={80} />
        </Section>
        <Section title="You">
          <TextField label="Your name" {...field("name")} />
          <NewPinPads value={pin} onChange={setPin} />
          <TextField label="What people call this device" value={deviceName} onChange={setDeviceName} limit={80} />
        </Section>
        <EntryRefused outcome={entering.outcome} />
        <Button kind="primary" type="submit" isDisabled={!isReady} isBusy={entering.isBusy}>
          Set up the station
        </Button>
      </form>
    </Page>
  );
}
