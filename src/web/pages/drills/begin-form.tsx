import { flushDue, isSameSeal, sayMet, type FlushDue } from "#readiness";
import { beginDrill, mayWrite } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ButtonLink, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { useWords } from "#web/language/index.ts";

/** Sets the kit aside for a drill: who is drilled, and the seal as it is read before it is broken. */
export function BeginForm({ at }: { readonly at: KitAtHand }) {
  const words = useWords("drill");
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
  if (!mayWrite(view.me.role, "drill-begun")) return <Notice title={words.noneOn()} />;
  if (kit.turnaround) return <Notice title={words.turnaroundOpen()} />;
  const flush = flushDue(kit, at.pattern);
  if (flush) return <MustFlush kit={kit.id} flush={flush} />;
  return (
    <Section title={words.setAside()}>
      <p>{words.setAsideMore()}</p>
      <Trainees at={at} picked={trainees} onPick={setTrainees} />
      <TextField
        label={words.sealRead()}
        value={seal}
        onChange={(text) => {
          setSeal(text);
          setHasNone(false);
        }}
        isShort
        limit={40}
      />
      <Button wide isPressed={hasNone} onPress={() => setHasNone(!hasNone)}>
        {words.noSeal()}
      </Button>
      {differs && (
        <Notice tone="attention" title={words.sealDiffers()} isNews>
          <p>{words.sealDiffersMore()}</p>
        </Notice>
      )}
      <ErrorBox error={doing.error} title={words.notBegun()} />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void begin()}>
        {words.begin()}
      </Button>
    </Section>
  );
}

/** What it met eats at it while it would wait: the station would not take the drill. */
function MustFlush({ kit, flush }: { readonly kit: string; readonly flush: FlushDue }) {
  const words = useWords("drill");
  const standing = useWords("standing");
  const what = sayMet(
    flush.all.map((met) => met.what),
    standing,
  );
  return (
    <Notice tone="attention" title={words.mustFlush({ what })}>
      <p>{words.mustFlushMore()}</p>
      <ButtonLink to={`/kit/${kit}`}>{words.toKit()}</ButtonLink>
    </Notice>
  );
}

interface TraineesProps {
  readonly at: KitAtHand;
  readonly picked: readonly string[];
  readonly onPick: (people: readonly string[]) => void;
}

/** Who is to find what is planted. */
function Trainees({ at: { view }, picked, onPick }: TraineesProps) {
  const words = useWords("drill");
  const hands = view.people.filter(({ left, role }) => !left && mayWrite(role, "turnaround-opened"));
  return (
    <fieldset className="drill-people">
      <legend className="field-label">{words.whoDrilled()}</legend>
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
