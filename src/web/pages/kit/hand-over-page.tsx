import { useState } from "react";
import { useLocation } from "wouter";
import type { Bodies } from "#readiness";
import { handOver, writeStrokes, type Stroke } from "#station";
import { useCarryOut } from "../../device/index.ts";
import { Button, ErrorBox, Notice, StandingMark, TextField, useDoing } from "../../parts/index.ts";
import { Choice } from "../../parts/fields/choice.tsx";
import type { KitAtHand } from "../../kit-view/at-hand.ts";
import { DateField } from "../../parts/fields/date-field.tsx";
import { Briefing } from "./hand-over/briefing.tsx";
import { SignaturePad } from "./hand-over/signature-pad.tsx";
import { KitFormPage } from "./kit-form-page.tsx";

type Method = Bodies["handed-over"]["method"];

const METHODS: readonly { readonly value: Method; readonly label: string }[] = [
  { value: "passed", label: "Passed across by hand" },
  { value: "hoisted", label: "Hoisted down" },
  { value: "line", label: "Sent along a line" },
  { value: "dropped", label: "Dropped into the water" },
  { value: "other", label: "Another way" },
];

const SEALS = [
  { value: "whole", label: "Whole: it goes sealed" },
  { value: "broken", label: "Broken or taken off" },
] as const;

/** A kit leaving to a vessel. */
export default function HandOverPage() {
  return <KitFormPage title={(kit) => `Hand ${kit} over`}>{(at) => <HandOverForm at={at} />}</KitFormPage>;
}

function HandOverForm({ at }: { readonly at: KitAtHand }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [to, setTo] = useState("");
  const [method, setMethod] = useState<Method>();
  const [seal, setSeal] = useState<(typeof SEALS)[number]["value"]>();
  const [note, setNote] = useState("");
  const [beyond, setBeyond] = useState<Beyond>(NOTHING_BEYOND);
  const isReady = to.trim() !== "" && method !== undefined && seal !== undefined && !beyond.isPartly;
  const save = async () => {
    if (!method || !seal) return;
    const written = note.trim() === "" ? {} : { note: note.trim() };
    const body = { to: to.trim(), method, sealBroken: seal === "broken", ...written, ...beyondOf(beyond) };
    if (await doing.run(() => carryOut((now) => handOver(now, at.kit, body)))) go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      <NotReady at={at} />
      <TextField
        label="To which vessel"
        hint="Name, and where she lies or what she is."
        value={to}
        onChange={setTo}
        limit={120}
      />
      <Choice label="How does it go?" options={METHODS} value={method} onChange={setMethod} />
      <Choice label="Its seal" options={SEALS} value={seal} onChange={setSeal} />
      <BeyondPart at={at} beyond={beyond} onBeyond={(part) => setBeyond((held) => ({ ...held, ...part }))} />
      <TextField label="Note, if any" value={note} onChange={setNote} isLong />
      <ErrorBox error={doing.error} title="Not written down" />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void save()}>
        Handed over
      </Button>
    </>
  );
}

/** What may be said of a hand-over beyond what must be: none of it holds a kit up. */
interface Beyond {
  readonly back: string | undefined;
  /** A day was begun and is none yet. */
  readonly isPartly: boolean;
  readonly name: string;
  readonly strokes: readonly Stroke[];
  readonly briefed: boolean | undefined;
}

const NOTHING_BEYOND: Beyond = { back: undefined, isPartly: false, name: "", strokes: [], briefed: undefined };

function beyondOf({ back, name, strokes, briefed }: Beyond): Pick<Bodies["handed-over"], "back" | "taken" | "briefed"> {
  const drawn = writeStrokes(strokes);
  const written = name.trim() === "" ? {} : { name: name.trim() };
  const taken = { ...written, ...(drawn && { strokes: drawn }) };
  const isTaken = name.trim() !== "" || drawn !== undefined;
  return {
    ...(back !== undefined && { back }),
    ...(isTaken && { taken }),
    ...(briefed !== undefined && { briefed }),
  };
}

interface BeyondPartProps {
  readonly at: KitAtHand;
  readonly beyond: Beyond;
  readonly onBeyond: (part: Partial<Beyond>) => void;
}

function BeyondPart({ at, beyond, onBeyond }: BeyondPartProps) {
  return (
    <>
      <Briefing pattern={at.pattern} briefed={beyond.briefed} onBriefed={(briefed) => onBeyond({ briefed })} />
      <DateField
        label="Expected back by, if it was said"
        hint="Work due asks for it from that day on."
        mayBeMonth={false}
        isPrinted={false}
        value={beyond.back}
        onChange={(back) => onBeyond({ back })}
        onPartly={(isPartly) => onBeyond({ isPartly })}
        {...(beyond.isPartly && { fault: "Put the day right, or clear it." })}
      />
      <TextField label="Taken by, if known" value={beyond.name} onChange={(name) => onBeyond({ name })} limit={80} />
      <SignaturePad strokes={beyond.strokes} onStrokes={(strokes) => onBeyond({ strokes })} />
    </>
  );
}

/** A kit that is not ready may still go; whoever sends it should know, and pass on the limits. */
function NotReady({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const standing = view.standings.get(kit.id);
  if (!standing || standing.standing === "ready") return null;
  return (
    <Notice
      tone="attention"
      title={standing.standing === "ready-with-limits" ? `${kit.name} goes with limits` : `${kit.name} is not ready`}
    >
      <p>
        <StandingMark standing={standing.standing} />
      </p>
      <p>{standing.because[0]?.text}</p>
      {standing.limits.map((limit) => (
        <p key={limit}>Tell the vessel: {limit}</p>
      ))}
    </Notice>
  );
}
