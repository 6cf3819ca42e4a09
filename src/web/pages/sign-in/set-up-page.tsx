import { useState, type FormEvent } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, Page, Section, TextField } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { useDeviceName } from "../sign-in/device-name.ts";
import { EntryRefused } from "#web/way-in/entry-refused.tsx";
import { isPinReady, NewPinPads, NO_PIN } from "#web/way-in/new-pin.tsx";
import { useEntering } from "#web/way-in/use-entering.ts";
import "#web/way-in/sign-in.css";

const EMPTY = { code: "", stationName: "", name: "", place: "" };

/** Makes an empty station's first administrator and first place. */
export default function SetUpPage() {
  const device = useThisDevice();
  const words = useWords("signIn");
  const entering = useEntering();
  const [given, setGiven] = useState(EMPTY);
  const [strength, setStrength] = useState<number>();
  const [zone, setZone] = useState(() => new Intl.DateTimeFormat().resolvedOptions().timeZone);
  const [pin, setPin] = useState(NO_PIN);
  const [deviceName, setDeviceName] = useDeviceName();
  const isReady =
    [...Object.values(given), zone, deviceName].every((text) => text.trim() !== "") &&
    strength !== undefined &&
    isPinReady(pin);
  const field = (name: keyof typeof EMPTY) => ({
    value: given[name],
    onChange: (text: string) => setGiven({ ...given, [name]: text }),
    limit: 80,
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isReady) return;
    const place = { name: given.place.trim(), strength: strength ?? 0, zone: zone.trim() };
    const who = { code: given.code.trim(), stationName: given.stationName.trim(), name: given.name.trim() };
    const from = { device: device.id, deviceName: deviceName.trim() };
    void entering.enter(() => device.desk.setUp({ ...who, pin: pin.first, place, ...from }));
  };
  return (
    <Page title={words.setUp()} frame="full">
      <p>{words.setUpMore()}</p>
      <form className="sign-in-form" onSubmit={submit}>
        <TextField label={words.terminalCode()} {...field("code")} />
        <Section title={words.theStation()}>
          <TextField label={words.stationName()} {...field("stationName")} />
          <TextField label={words.firstPlace()} hint={words.firstPlaceHint()} {...field("place")} />
          <NumberField
            label={words.strength()}
            hint={words.strengthHint()}
            value={strength}
            onChange={setStrength}
            least={0}
            most={1000}
          />
          <TextField label={words.zone()} value={zone} onChange={setZone} limit={80} />
        </Section>
        <Section title={words.you()}>
          <TextField label={words.yourName()} {...field("name")} />
          <NewPinPads value={pin} onChange={setPin} />
          <TextField label={words.deviceName()} value={deviceName} onChange={setDeviceName} limit={80} />
        </Section>
        <EntryRefused outcome={entering.outcome} />
        <Button kind="primary" type="submit" isDisabled={!isReady} isBusy={entering.isBusy}>
          {words.setUpDo()}
        </Button>
      </form>
    </Page>
  );
}
