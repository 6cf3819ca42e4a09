import { browserSupportsWebAuthn } from "@simplewebauthn/browser";
import { useState } from "react";
import { useThisDevice } from "../../device/index.ts";
import type { Reply } from "../../device/server-door.ts";
import { Button, Notice, Section, TextField, useDoing } from "../../parts/index.ts";

/** The person's own PIN and passkeys. Both need the network. */
export function SignInSettings() {
  return (
    <Section title="Signing in">
      <ChangePin />
      {browserSupportsWebAuthn() && <AddPasskey />}
    </Section>
  );
}

function ChangePin() {
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [pins, setPins] = useState({ old: "", new: "" });
  const [reply, setReply] = useState<Reply<undefined>>();
  const change = () => run(async () => setReply(await door.ask({ method: "PUT", path: "/api/pin", json: pins })));
  const isReady = pins.old !== "" && /^\d{6,12}$/.test(pins.new);
  return (
    <>
      <TextField
        label="Your PIN now"
        type="password"
        inputMode="numeric"
        isShort
        value={pins.old}
        onChange={(old) => setPins({ ...pins, old })}
        limit={64}
      />
      <TextField
        label="New PIN"
        hint="6 to 12 figures."
        type="password"
        inputMode="numeric"
        isShort
        value={pins.new}
        onChange={(next) => setPins({ ...pins, new: next })}
        limit={12}
      />
      <div>
        <Button onPress={() => void change()} isDisabled={!isReady} isBusy={isBusy}>
          Change the PIN
        </Button>
      </div>
      <Told reply={reply} done="The PIN is changed." />
    </>
  );
}

function AddPasskey() {
  const { desk } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [reply, setReply] = useState<Reply<undefined>>();
  return (
    <>
      <div>
        <Button onPress={() => void run(async () => setReply(await desk.addPasskey()))} isBusy={isBusy}>
          Add a passkey on this device
        </Button>
      </div>
      <Told reply={reply} done="The passkey is added." />
    </>
  );
}

function Told({ reply, done }: { readonly reply: Reply<undefined> | undefined; readonly done: string }) {
  if (!reply) return null;
  if (reply.kind === "answered") return <Notice title={done} isNews />;
  if (reply.kind === "unreachable") return <Notice tone="attention" title="The station cannot be reached." isNews />;
  return (
    <Notice tone="wrong" title={reply.problem.message} isNews>
      <p>{reply.problem.remedy}</p>
    </Notice>
  );
}
