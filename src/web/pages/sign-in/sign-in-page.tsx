import { browserSupportsWebAuthn } from "@simplewebauthn/browser";
import { useState, type FormEvent } from "react";
import { Redirect } from "wouter";
import { useDeviceState, useThisDevice } from "../../device/index.ts";
import { Button, EmptiedNotice, InsecureNotice, Notice, Page, sayCount, TextField } from "../../parts/index.ts";
import { DemoPeople } from "./demo-people.tsx";
import { useDeviceName } from "./device-name.ts";
import { EntryRefused } from "../../way-in/entry-refused.tsx";
import { PinPad } from "../../way-in/pin-pad.tsx";
import { useEntering, type Entering } from "../../way-in/use-entering.ts";

/** Sign in once on this device; from then on it works without a network. */
export default function SignInPage() {
  const state = useDeviceState();
  const entering = useEntering();
  const server = state.kind === "signed-out" ? state.server : undefined;
  if (server?.needsSetup === true) return <Redirect to="/set-up" replace />;
  const stationName = state.kind === "signed-in" ? state.sitting.stationName : server?.stationName;
  return (
    <Page title={stationName ? `Sign in at ${stationName}` : "Sign in"} frame="full">
      <DoorNotices />
      <SignInForm entering={entering} people={server?.demo ?? []} />
    </Page>
  );
}

function DoorNotices() {
  const state = useDeviceState();
  if (state.kind !== "signed-out") return null;
  const emptied = state.alarms.find((alarm) => alarm.kind === "emptied");
  return (
    <>
      {emptied && <EmptiedNotice lastUsed={emptied.lastUsed} />}
      <InsecureNotice />
      {state.waiting > 0 && (
        <Notice tone="attention" title={`${sayCount(state.waiting, "line")} on this device not sent`}>
          <p>They are sent when whoever wrote them signs in here again.</p>
        </Notice>
      )}
      {state.server?.because === "device-shut-out" && (
        <Notice tone="wrong" title="This device was shut out of the station">
          <p>Ask an administrator. What it holds can still be saved to a file.</p>
          <SaveHeld />
        </Notice>
      )}
      {state.server?.because === "person-left" && (
        <Notice tone="wrong" title="Who was signed in here is no longer on the station's list">
          <p>Ask an administrator if that is wrong. What this device holds can still be saved to a file.</p>
          <SaveHeld />
        </Notice>
      )}
      {state.server?.because === "expired" && <Notice title="The last sign-in here has run out. Sign in again." />}
    </>
  );
}

function SaveHeld() {
  const device = useThisDevice();
  return (
    <p>
      <Button onPress={() => void device.held.save()}>Save everything held here</Button>
    </p>
  );
}

interface SignInFormProps {
  readonly entering: Entering;
  readonly people: React.ComponentProps<typeof DemoPeople>["people"];
}

function SignInForm({ entering, people }: SignInFormProps) {
  const device = useThisDevice();
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
          label="What people call this device"
          hint="Such as Boat room tablet. It is written beside what is done on it."
          value={deviceName}
          onChange={setDeviceName}
          limit={80}
        />
        <TextField label="Your name" value={name} onChange={setName} autoComplete="username" limit={80} />
        <PinPad label="Your PIN" value={pin} onChange={setPin} />
        <EntryRefused outcome={entering.outcome} />
        <Button kind="primary" type="submit" isDisabled={!isReady} isBusy={entering.isBusy}>
          Sign in
        </Button>
        {browserSupportsWebAuthn() && (
          <Button onPress={takePasskey} isDisabled={from.deviceName === ""} isBusy={entering.isBusy}>
            Sign in with a passkey
          </Button>
        )}
      </form>
      <DemoPeople
        people={people}
        isBusy={entering.isBusy}
        onChoose={({ name, pin }) => {
          const demo = { device: device.id, deviceName: from.deviceName || "Demo device" };
          void entering.enter(() => device.desk.signIn({ name, pin, ...demo }), pin);
        }}
      />
    </div>
  );
}
