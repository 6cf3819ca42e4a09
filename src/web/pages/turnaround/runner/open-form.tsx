import { useState } from "react";
import type { Bodies } from "#readiness";
import { useRecorder } from "#web/device/index.ts";
import { Button, ButtonLink, ErrorBox, Notice, Section, TextField } from "#web/parts/index.ts";
import { BringList } from "./bring-list.tsx";
import { KitActs } from "#web/act/acts.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { compareSeal, NO_SEAL, type SealComparison } from "#web/act/seal-reading.ts";
import { useSaving } from "#web/act/use-saving.ts";

type Because = Bodies["turnaround-opened"]["because"];

const REASONS: readonly { readonly value: Because; readonly label: string; readonly note: string }[] = [
  { value: "routine", label: "Routine", note: "The turnaround that is due, or one ahead of time." },
  { value: "returned", label: "Back from a vessel", note: "It was handed over and has come back." },
  { value: "finding", label: "To put a finding right", note: "Something open on it needs mending or replacing." },
  { value: "lapse", label: "Something in it runs out", note: "A date, the fuel, a wrapping." },
  { value: "seal", label: "The seal", note: "Broken, missing, or not the number on record." },
];

/** Opens a turnaround, where the kit is here to be opened. */
export function OpenForm({ at }: { readonly at: KitAtHand }) {
  const { custody } = at.kit;
  return custody.kind === "away" ? <IsAway at={at} to={custody.to} /> : <Opening at={at} />;
}

/** Said before anything is asked: a kit that is not here cannot be opened here. */
function IsAway({ at, to }: { readonly at: KitAtHand; readonly to: string }) {
  const { id, name } = at.kit;
  return (
    <Notice tone="attention" title={`${name} is with ${to}`}>
      <p>It cannot be opened here until it is back. If it is back, write down its return first.</p>
      <ButtonLink to={`/kit/${id}/return`}>Write down its return</ButtonLink>
    </Notice>
  );
}

/** Readings of a seal that are kept beside the one a kit is opened by. */
const MOST_BEFORE = 10;

/** The seal as it is read off the container, then why it is opened: that tap opens it. Every reading is kept. */
function Opening({ at }: { readonly at: KitAtHand }) {
  const acts = new KitActs(useRecorder(), at.view, at.kit);
  const saving = useSaving();
  const [seal, setSeal] = useState("");
  const [hasNone, setHasNone] = useState(false);
  const [missing, setMissing] = useState(false);
  const [differs, setDiffers] = useState<Differing>();
  const [before, setBefore] = useState<readonly string[]>([]);
  const open = (because: Because, sealSeen: string) => {
    const others = before.filter((one) => one !== sealSeen);
    const body = { because, sealSeen, ...(others.length > 0 && { sealReadBefore: others }) };
    void saving.save(() => acts.open(body));
  };
  const doubt = (sealSeen: string, found: Differing) => {
    setBefore([...before.filter((one) => one !== sealSeen), sealSeen].slice(-MOST_BEFORE));
    setDiffers(found);
  };
  const read = (because: Because) => {
    const sealSeen = hasNone ? NO_SEAL : seal.trim() || undefined;
    setMissing(sealSeen === undefined);
    if (sealSeen === undefined) return;
    const compared = compareSeal(sealSeen, at.kit.seal?.number);
    if (compared.agrees) open(because, sealSeen);
    else doubt(sealSeen, { ...compared, because });
  };
  const change = (text: string, none: boolean) => {
    setSeal(text);
    setHasNone(none);
    setDiffers(undefined);
  };
  return (
    <>
      <BringList pattern={at.pattern} />
      <TextField
        label="Seal number, read off the container"
        hint="Every figure, leading noughts too. Read the seal, not the card."
        value={seal}
        onChange={(text) => change(text, false)}
        isShort
        {...(missing && !hasNone && { fault: "Read the seal and write its number, or say that there is none." })}
      />
      <Button wide isPressed={hasNone} onPress={() => change("", !hasNone)}>
        There is no seal on it
      </Button>
      {differs && <SealDiffers differs={differs} onOpen={() => open(differs.because, differs.seen)} />}
      <ErrorBox error={saving.error} title="Not opened" />
      {!differs && <Reasons onPick={read} />}
    </>
  );
}

/** Why it is opened; the tap goes to the first line. The seal stays whole until a line says to cut it. */
function Reasons({ onPick }: { readonly onPick: (because: Because) => void }) {
  return (
    <Section title="Why is it opened?">
      <p>Leave the container shut where it stands. The lines say when the seal is cut.</p>
      <div className="open-reasons">
        {REASONS.map(({ value, label, note }) => (
          <Button key={value} kind="primary" wide onPress={() => onPick(value)}>
            <span className="open-reason">
              {label} <span className="open-note">{note}</span>
            </span>
          </Button>
        ))}
      </div>
    </Section>
  );
}

type Differing = SealComparison & { readonly because: Because };

interface SealDiffersProps {
  readonly differs: Differing;
  readonly onOpen: () => void;
}

/** The seal read is not the one on record: said plainly, and written down as read. */
function SealDiffers({ differs, onOpen }: SealDiffersProps) {
  return (
    <Notice tone="wrong" title="The seal does not match the record" isNews>
      <p>{differs.words}</p>
      <p>
        Look at the seal again. If you misread it, correct the number above; the log keeps both. If it reads so,
        somebody may have been in the kit: open it, and examine every item.
      </p>
      <Button kind="primary" tone="grave" onPress={onOpen}>
        {differs.seen === NO_SEAL ? "No seal: open it" : `It reads ${differs.seen}: open it`}
      </Button>
    </Notice>
  );
}
