import type { OwnPasskeys } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice, type ThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ConfirmDialog, Timestamp, useDoing } from "#web/parts/index.ts";
import { sayEnded } from "./elsewhere.tsx";
import { Told } from "./told.tsx";
import "./settings.css";

type Passkey = OwnPasskeys["passkeys"][number];

interface Done {
  readonly reply: Reply<unknown>;
  readonly said: string;
}

/** One's own passkeys: what there is, one more for this device, and away with one whose device is gone. */
export function OwnPasskeysSettings() {
  const { desk } = useThisDevice();
  const { isBusy, run } = useDoing();
  const words = useWords("settings");
  const { passkeys, look } = useOwnPasskeys();
  const [done, setDone] = useState<Done>();
  const act = (doIt: () => Promise<Done>) =>
    run(async () => {
      setDone(await doIt());
      await look();
    });
  const remove = async (id: string): Promise<Done> => {
    const reply = await desk.removePasskey(id);
    return { reply, said: `${words.removedPasskey()}${sayEnded(reply, words)}` };
  };
  const add = async (): Promise<Done> => ({ reply: await desk.addPasskey(), said: words.addedPasskey() });
  return (
    <>
      {passkeys !== undefined && passkeys.length > 0 && (
        <ul className="own-passkeys" aria-label={words.passkeys()}>
          {passkeys.map((passkey) => (
            <OwnPasskey
              key={passkey.id}
              passkey={passkey}
              isBusy={isBusy}
              onRemove={() => void act(() => remove(passkey.id))}
            />
          ))}
        </ul>
      )}
      <div>
        <Button onPress={() => void act(add)} isBusy={isBusy}>
          {words.addPasskey()}
        </Button>
      </div>
      <Told reply={done?.reply} done={done?.said ?? ""} />
    </>
  );
}

/** What the station holds; undefined where it cannot be asked just now. */
function useOwnPasskeys() {
  const { desk } = useThisDevice();
  const [passkeys, setPasskeys] = useState<readonly Passkey[]>();
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const held = await passkeysHeld(desk);
      if (!isGone) setPasskeys(held);
    };
    void read();
    return () => {
      isGone = true;
    };
  }, [desk]);
  return { passkeys, look: async () => setPasskeys(await passkeysHeld(desk)) };
}

async function passkeysHeld(desk: ThisDevice["desk"]): Promise<readonly Passkey[] | undefined> {
  const reply = await desk.ownPasskeys();
  return reply.kind === "answered" ? reply.value.passkeys : undefined;
}

interface OwnPasskeyProps {
  readonly passkey: Passkey;
  readonly isBusy: boolean;
  readonly onRemove: () => void;
}

function OwnPasskey({ passkey, isBusy, onRemove }: OwnPasskeyProps) {
  const [isAsking, setAsking] = useState(false);
  const words = useWords("settings");
  return (
    <li>
      <span>{withParts(words.passkeyAdded, { at: <Timestamp at={passkey.created} /> })}</span>
      <Button kind="quiet" tone="grave" onPress={() => setAsking(true)} isBusy={isBusy}>
        {words.removePasskey()}
      </Button>
      <ConfirmDialog
        title={words.removePasskeyAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => {
          setAsking(false);
          onRemove();
        }}
        confirm={words.removeDo()}
        tone="grave"
      >
        <p>{words.removePasskeyMore()}</p>
        <p>{words.removePasskeyElsewhere()}</p>
      </ConfirmDialog>
    </li>
  );
}
