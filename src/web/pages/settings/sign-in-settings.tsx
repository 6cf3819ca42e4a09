import { PIN_LENGTH, pinWeakness, type EndedSessions } from "#station";
import { useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useWords } from "#web/language/index.ts";
import { Button, Section, TextField, useDoing } from "#web/parts/index.ts";
import { sayPinWeakness } from "#web/way-in/new-pin.tsx";
import { ElsewhereChoice, sayEnded, type Elsewhere } from "./elsewhere.tsx";
import { OwnPasskeysSettings } from "./own-passkeys.tsx";
import { Told } from "./told.tsx";
import { WrongPins } from "./wrong-pins.tsx";
import { hasPasskeys } from "#web/way-in/has-passkeys.ts";

/** The person's own PIN and passkeys. Both need the network. */
export function SignInSettings() {
  const words = useWords("settings");
  return (
    <Section title={words.signingIn()}>
      <WrongPins />
      <ChangePin />
      {hasPasskeys() && <OwnPasskeysSettings />}
    </Section>
  );
}

function ChangePin() {
  const { door, lock } = useThisDevice();
  const words = useWords("settings");
  const signIn = useWords("signIn");
  const { isBusy, run } = useDoing();
  const [pins, setPins] = useState({ old: "", new: "" });
  const [elsewhere, setElsewhere] = useState<Elsewhere>("end");
  const [reply, setReply] = useState<Reply<EndedSessions>>();
  const json = { ...pins, endOthers: elsewhere === "end" };
  const change = () =>
    run(async () => {
      const told = await door.ask<EndedSessions>({ method: "PUT", path: "/api/pin", json });
      if (told.kind === "answered") await lock.keepPin(pins.new);
      setReply(told);
    });
  const weakness = pinWeakness(pins.new);
  const isReady = pins.old !== "" && weakness === undefined;
  return (
    <>
      <TextField
        label={words.pinNow()}
        type="password"
        inputMode="numeric"
        isShort
        value={pins.old}
        onChange={(old) => setPins({ ...pins, old })}
        limit={64}
      />
      <TextField
        label={words.newPin()}
        hint={words.newPinHint(PIN_LENGTH)}
        {...(pins.new.length >= 6 && weakness !== undefined && { fault: sayPinWeakness(weakness, signIn) })}
        type="password"
        inputMode="numeric"
        isShort
        value={pins.new}
        onChange={(next) => setPins({ ...pins, new: next })}
        limit={12}
      />
      <ElsewhereChoice value={elsewhere} onChange={setElsewhere} />
      <div>
        <Button onPress={() => void change()} isDisabled={!isReady} isBusy={isBusy}>
          {words.changePin()}
        </Button>
      </div>
      <Told reply={reply} done={`${words.pinChanged()}${sayEnded(reply, words)}`} />
    </>
  );
}
