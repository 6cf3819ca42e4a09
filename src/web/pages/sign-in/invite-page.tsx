import { useState, type FormEvent } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, Page, TextField } from "#web/parts/index.ts";
import { useDeviceName } from "./device-name.ts";
import { EntryRefused } from "#web/way-in/entry-refused.tsx";
import { isPinReady, NewPinPads, NO_PIN } from "#web/way-in/new-pin.tsx";
import { useEntering } from "#web/way-in/use-entering.ts";

/** Takes an invite, by its link or by its code typed in, and sets the PIN. */
export default function InvitePage() {
  const device = useThisDevice();
  const words = useWords("signIn");
  const entering = useEntering();
  const [code, setCode] = useState(() => decodeURIComponent(location.hash.slice(1)));
  const [deviceName, setDeviceName] = useDeviceName();
  const [pin, setPin] = useState(NO_PIN);
  const isReady = code.trim() !== "" && deviceName.trim() !== "" && isPinReady(pin);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isReady) return;
    const from = { device: device.id, deviceName: deviceName.trim() };
    void entering.enter(() => device.desk.acceptInvite({ code: code.trim(), pin: pin.first, ...from }), pin.first);
  };
  return (
    <Page title={words.join()} frame="full" back={{ to: "/sign-in", label: words.title() }}>
      <form className="sign-in-form" onSubmit={submit}>
        <TextField label={words.code()} hint={words.codeHint()} value={code} onChange={setCode} limit={64} />
        <TextField
          label={words.deviceName()}
          hint={words.deviceNameHint()}
          value={deviceName}
          onChange={setDeviceName}
          limit={80}
        />
        <NewPinPads value={pin} onChange={setPin} />
        <EntryRefused outcome={entering.outcome} />
        <Button kind="primary" type="submit" isDisabled={!isReady} isBusy={entering.isBusy}>
          {words.setPin()}
        </Button>
      </form>
    </Page>
  );
}
