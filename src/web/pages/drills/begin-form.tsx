import { isSameSeal } from "#readiness";
import { beginDrill, mayWrite } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** Sets the kit aside for a drill: who is drilled, and the seal as it is read before it is broken. */
export function BeginForm({ at }: { readonly at: KitAtHand }) {
  const { kit, view } = at;
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [trainees, setTrainees] = useState<readonly string[]>([]);
  const [seal, setSeal] = useState("");
  const [hasNone, setHasNone] = useState(false);
  const differs = !hasNone && seal.trim() !== "" && kit.seal !== undefined && !isSameSeal(seal, kit.seal.number);
  const isReady = trainees.length > 0 && (hasNone || seal.trim() !== "");
  const begin = () =>
    doing.run(() =>
      carryOut((one) => beginDrill(one, kit, { drill: uuidv7(), sealSeen: hasNone ? "" : seal.trim(), trainees })),
    );
  if (!mayWrite(view.me.role, "drill-begun")) return <Notice title="No drill is on: a keeper begins one" />;
  if (kit.turnaround) return <Notice title="A turnaround is open: close it before a drill" />;
  return (
    <Section title="Set it aside for a drill">
      <p>
        The kit does not count as ready from here on, until it has been turned round and sealed after the drill. Whoever
        plants the faults is not drilled, and does it unseen.
      </p>
      <Trainees at={at} picked={trainees} onPick={setTrainees} />
      <TextField
        label="Seal number, read off the container"
        value={seal}
        onChange={(text) => {
          setSeal(text);
          setHasNone(false);
        }}
        isShort
        limit={40}
      />
      <Button wide isPressed={hasNone} onPress={() => setHasNone(!hasNone)}>
        There is no seal on it
      </Button>
      {differs && (
        <Notice tone="attention" title="That is not what the record says" isNews>
          <p>
            Look at the seal once more. If it reads so, somebody has opened the kit since: begin all the same, and it
            stands in the log as read.
          </p>
        </Notice>
      )}
      <ErrorBox error={doing.error} title="Not begun" />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void begin()}>
        Break the seal and begin the drill
      </Button>
    </Section>
  );
}

interface TraineesProps {
  readonly at: KitAtHand;
  readonly picked: readonly string[];
  readonly onPick: (people: readonly string[]) => void;
}

/** Who is to find what is planted. */
function Trainees({ at: { view }, picked, onPick }: TraineesProps) {
  const hands = view.people.filter(({ left, role }) => !left && mayWrite(role, "turnaround-opened"));
  return (
    <fieldset className="drill-people">
      <legend className="field-label">Who is drilled?</legend>
      {hands.map(({ id, name }) => {
        const isPicked = picked.includes(id);
        const toggle = () => onPick(isPicked ? picked.filter((one) => one !== id) : [...picked, id]);
        return (
          <Button key={id} wide isPressed={isPicked} onPress={toggle}>
            {name}
          </Button>
        );
      })}
    </fieldset>
  );
}
