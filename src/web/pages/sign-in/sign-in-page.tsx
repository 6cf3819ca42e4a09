import { useState, type FormEvent } from "react";
import { Redirect } from "wouter";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, EmptiedNotice, InsecureNotice, Notice, Page, TextField } from "#web/parts/index.ts";
import { DemoPeople } from "./demo-people.tsx";
import { useDeviceName } from "./device-name.ts";
import { EntryRefused } from "#web/way-in/entry-refused.tsx";
import { PinPad } from "#web/way-in/pin-pad.tsx";
import { useEntering, type Entering } from "#web/way-in/use-entering.ts";
import { hasPasskeys } from "#web/way-in/has-passkeys.ts";

/** Sign in once on this device; from then on it works without a network. */
export default function SignInPage() {
  const state = useDeviceState();
  const words = useWords("signIn");
  const entering = useEntering();
  const server = state.kind === "signed-out" ? state.server : undefined;
  if (server?.needsSetup === true) return <Redirect to="/set-up" replace />;
  const stationName = state.kind === "signed-in" ? state.sitting.stationName : server?.stationName;
  return (
    <Page title={stationName ? words.titleAt({ station: stationName }) : words.title()} frame="full">
      <DoorNotices />
      <SignInForm entering={entering} people={server?.demo ?? []} />
    </Page>
  );
}

function DoorNotices() {
  const state = useDeviceState();
  const words = useWords("signIn");
  if (state.kind !== "signed-out") return null;
  const emptied = state.alarms.find((alarm) => alarm.kind === "emptied");
  return (
    <>
      {emptied && <EmptiedNotice lastUsed={emptied.lastUsed} />}
      <InsecureNotice />
      {state.waiting > 0 && (
        <Notice tone="attention" title={words.notSent({ count: state.waiting })}>
          <p>{words.notSentMore()}</p>
        </Notice>
      )}
      {state.server?.because === "device-shut-out" && (
        <Notice tone="wrong" title={words.shutOut()}>
          <p>{words.shutOutMore()}</p>
          <SaveHeld />
        </Notice>
      )}
      {state.server?.because === "person-left" && (
        <Notice tone="wrong" title={words.left()}>
          <p>{words.leftMore()}</p>
          <SaveHeld />
        </Notice>
      )}
      {state.server?.because === "expired" && <Notice title={words.expired()} />}
    </>
  );
}

function SaveHeld() {
  const device = useThisDevice();
  const words = useWords("signIn");
  return (
    <p>
      <Button onPress={() => void device.held.save()}>{words.saveHeld()}</Button>
    </p>
  );
}

interface SignInFormProps {
  readonly entering: Entering;
  readonly people: React.ComponentProps<typeof DemoPeople>["people"];
}

function SignInForm({ entering, people }: SignInFormProps) {
  const device = useThisDevice();
  const words = useWords("signIn");
  const [name, setName] = useState("");
  const [pin, setPin] = useState("");
  const [deviceName, setDeviceName] = useDeviceName();
  const from = { device: device.id, deviceName: deviceName.trim() };
  const isReady = name.trim() !== "" && pin.length > 0 && from.deviceName !== "";
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isReady) void entering.enter(() => device.desk.signIn({ name: name.trim(), pin, ...from }), pin);
  };
  const takePasskey = () => void entering.enter(() => device.desk.signInWithPasskey(from));
  return (
    <div className="sign-in-ways">
      <form className="sign-in-form" onSubmit={submit}>
        <TextField
          label={words.deviceName()}
          hint={words.deviceNameWhy()}
          value={deviceName}
          onChange={setDeviceName}
          limit={80}
        />
        <TextField label={words.yourName()} value={name} onChange={setName} autoComplete="username" limit={80} />
        <PinPad label={words.yourPin()} value={pin} onChange={setPin} />
        <EntryRefused outcome={entering.outcome} />
        <Button kind="primary" type="submit" isDisabled={!isReady} isBusy={entering.isBusy}>
          {words.title()}
        </Button>
        {hasPasskeys() && (
          <Button onPress={takePasskey} isDisabled={from.deviceName === ""} isBusy={entering.isBusy}>
            {words.passkey()}
          </Button>
        )}
      </form>
      <DemoPeople
        people={people}
        isBusy={entering.isBusy}
        onChoose={({ name, pin }) => {
          const demo = { device: device.id, deviceName: from.deviceName || words.demoDevice() };
          void entering.enter(() => device.desk.signIn({ name, pin, ...demo }), pin);
        }}
      />
    </div>
  );
}
