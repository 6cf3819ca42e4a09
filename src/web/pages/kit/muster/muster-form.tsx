import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import type { KitState } from "#readiness";
import { musterKit } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, GloveRow, Notice, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NO_SEAL, sealAgrees } from "#web/act/seal-reading.ts";

const SOUND = ["sound", "unsound"] as const;

type Sound = (typeof SOUND)[number];

export interface MusterFormProps {
  readonly kit: KitState;
  readonly onDone: (sealSeen: string) => void;
  readonly onLeave: () => void;
}

/** What was seen of one kit: the seal as read, the container. Nothing is filled in beforehand. */
export function MusterForm({ kit, onDone, onLeave }: MusterFormProps) {
  const words = useWords("muster");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [seal, setSeal] = useState("");
  const [sound, setSound] = useState<Sound>();
  const [note, setNote] = useState("");
  const [doubted, setDoubted] = useState<string>();
  const write = async (sealSeen: string) => {
    const body = { sealSeen, containerSound: sound === "sound", ...(note.trim() !== "" && { note: note.trim() }) };
    if (await doing.run(() => carryOut((now) => musterKit(now, kit, body)))) onDone(sealSeen);
  };
  const read = (sealSeen: string) => {
    const agrees = sealAgrees(sealSeen, kit.seal?.number);
    if (agrees) void write(sealSeen);
    else setDoubted(sealSeen);
  };
  return (
    <div className="kit-form">
      <TextField
        label={words.seal()}
        hint={words.sealHint()}
        value={seal}
        onChange={(text) => (setSeal(text), setDoubted(undefined))}
        isShort
        limit={40}
      />
      <Choice
        label={words.container()}
        options={SOUND.map((one) => ({ value: one, label: words[one]() }))}
        value={sound}
        onChange={setSound}
        glove
      />
      <TextField label={words.note()} value={note} onChange={setNote} />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      {doubted !== undefined ? (
        <Doubt sealSeen={doubted} isBusy={doing.isBusy} onStand={() => void write(doubted)} />
      ) : (
        <GloveRow>
          <Button
            kind="primary"
            isDisabled={seal.trim() === "" || sound === undefined}
            isBusy={doing.isBusy}
            onPress={() => read(seal.trim())}
          >
            {words.seen()}
          </Button>
          <Button isDisabled={sound === undefined} onPress={() => read(NO_SEAL)}>
            {words.noSeal()}
          </Button>
        </GloveRow>
      )}
      <div>
        <Button kind="quiet" onPress={onLeave}>
          {words.leave()}
        </Button>
      </div>
    </div>
  );
}

interface DoubtProps {
  readonly sealSeen: string;
  readonly isBusy: boolean;
  readonly onStand: () => void;
}

/** The reading is not the record's: looked at once more, then written down as read. The record's number is not told. */
function Doubt({ sealSeen, isBusy, onStand }: DoubtProps) {
  const words = useWords("muster");
  return (
    <Notice tone="wrong" title={words.notRecord()} isNews>
      <p>{words.lookAgain()}</p>
      <Button kind="primary" tone="grave" isBusy={isBusy} onPress={onStand}>
        {sealSeen === NO_SEAL ? words.noSeal() : words.itReads({ seal: sealSeen })}
      </Button>
    </Notice>
  );
}
