import { useState } from "react";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { useLocation } from "wouter";
import { type Bodies, standingInWords } from "#readiness";
import { HAND_OVER_METHODS, handOver, methodChoice, writeStrokes, type HandOverMethod, type Stroke } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ButtonLink, ErrorBox, Notice, StandingMark, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { useKeptFor } from "#web/act/use-kept.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { Briefing } from "./hand-over/briefing.tsx";
import { readLent, sayLentRead, type LentWritten } from "./hand-over/lent-written.ts";
import { SignaturePad } from "./hand-over/signature-pad.tsx";
import { KitFormPage } from "./kit-form-page.tsx";

const METHODS = HAND_OVER_METHODS.map((value) => ({ value, label: methodChoice(value) }));

const SEALS = ["whole", "broken"] as const;

/** A kit leaving to a vessel. */
export default function HandOverPage() {
  const words = useWords("handOver");
  return (
    <KitFormPage title={(kit) => words.title({ kit })}>
      {(at) => (at.kit.turnaround ? <IsOpen at={at} /> : <HandOverForm at={at} />)}
    </KitFormPage>
  );
}

/** Said before anything is filled in: what lies open is not a kit that can go. */
function IsOpen({ at: { kit } }: { readonly at: KitAtHand }) {
  const words = useWords("handOver");
  return (
    <Notice tone="attention" title={words.isOpen({ kit: kit.name })}>
      <p>{words.isOpenMore()}</p>
      <ButtonLink to={`/kit/${kit.id}/turnaround`}>{words.goOn()}</ButtonLink>
    </Notice>
  );
}

/** What has been filled in. */
interface Filled {
  readonly to: string;
  readonly method?: HandOverMethod;
  readonly seal?: (typeof SEALS)[number];
  readonly note: string;
  readonly lent: string;
  readonly beyond: Beyond;
}

/** A form left lying so long is of another hand-over [h]: judgement. */
const KEPT_FOR = 12;

function HandOverForm({ at }: { readonly at: KitAtHand }) {
  const words = useWords("handOver");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  // What is no day yet is not kept: its field is empty after a reload.
  const [isPartly, setPartly] = useState(false);
  const { value: filled, change, clear } = useKeptFor<Filled>(KEPT_FOR, `hand-over.${at.kit.id}`, NOTHING);
  const fill = (part: Partial<Filled>) => change({ ...filled, ...part });
  const written = readLent(filled.lent, words);
  const save = async () => {
    const body = handOverOf(filled, words);
    if (!body || !(await doing.run(() => carryOut((now) => handOver(now, at.kit, body))))) return;
    clear();
    go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      <NotReady at={at} />
      <TextField
        label={words.vessel()}
        hint={words.vesselHint()}
        value={filled.to}
        onChange={(to) => fill({ to })}
        limit={120}
      />
      <Choice label={words.method()} options={METHODS} value={filled.method} onChange={(method) => fill({ method })} />
      <Choice
        label={words.itsSeal()}
        options={SEALS.map((value) => ({ value, label: value === "whole" ? words.sealWhole() : words.sealBroken() }))}
        value={filled.seal}
        onChange={(seal) => fill({ seal })}
      />
      <LentField text={filled.lent} written={written} onText={(lent) => fill({ lent })} />
      <BeyondPart
        at={at}
        beyond={filled.beyond}
        onBeyond={(part) => fill({ beyond: { ...filled.beyond, ...part } })}
        isPartly={isPartly}
        onPartly={setPartly}
      />
      <TextField label={words.note()} value={filled.note} onChange={(note) => fill({ note })} isLong />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <Button
        kind="primary"
        isDisabled={isPartly || handOverOf(filled, words) === undefined}
        isBusy={doing.isBusy}
        onPress={() => void save()}
      >
        {words.handedOver()}
      </Button>
    </>
  );
}

/** The line's body, once there is enough of it and nothing that cannot be taken. */
function handOverOf(
  { to, method, seal, note, lent: text, beyond }: Filled,
  words: Words["handOver"],
): Bodies["handed-over"] | undefined {
  const { lent, fault } = readLent(text, words);
  if (to.trim() === "" || !method || !seal || fault !== undefined) return undefined;
  return {
    to: to.trim(),
    method,
    sealBroken: seal === "broken",
    ...(note.trim() !== "" && { note: note.trim() }),
    ...(lent.length > 0 && { lent }),
    ...beyondOf(beyond),
  };
}

interface LentFieldProps {
  readonly text: string;
  readonly written: LentWritten;
  readonly onText: (text: string) => void;
}

/** What is lent with it, said back as it was read. */
function LentField({ text, written: { lent, fault }, onText }: LentFieldProps) {
  const words = useWords("handOver");
  return (
    <>
      <TextField
        label={words.lent()}
        hint={words.lentHint()}
        value={text}
        onChange={onText}
        isLong
        {...(fault !== undefined && { fault })}
      />
      {lent.length > 0 && fault === undefined && (
        <p className="field-echo">{words.lentRead({ lent: sayLentRead(lent) })}</p>
      )}
    </>
  );
}

/** What may be said of a hand-over beyond what must be: none of it holds a kit up. */
interface Beyond {
  readonly back?: string | undefined;
  readonly name: string;
  readonly strokes: readonly Stroke[];
  readonly briefed?: boolean;
}

const NOTHING: Filled = { to: "", note: "", lent: "", beyond: { name: "", strokes: [] } };

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
  /** A day was begun and is none yet. */
  readonly isPartly: boolean;
  readonly onPartly: (isPartly: boolean) => void;
}

function BeyondPart({ at, beyond, onBeyond, isPartly, onPartly }: BeyondPartProps) {
  const words = useWords("handOver");
  return (
    <>
      <Briefing pattern={at.pattern} briefed={beyond.briefed} onBriefed={(briefed) => onBeyond({ briefed })} />
      <DateField
        label={words.back()}
        hint={words.backHint()}
        mayBeMonth={false}
        isPrinted={false}
        value={beyond.back}
        onChange={(back) => onBeyond({ back })}
        onPartly={onPartly}
        {...(isPartly && { fault: words.dayFault() })}
      />
      <TextField label={words.takenBy()} value={beyond.name} onChange={(name) => onBeyond({ name })} limit={80} />
      <SignaturePad strokes={beyond.strokes} onStrokes={(strokes) => onBeyond({ strokes })} />
    </>
  );
}

/** A kit that is not ready may still go; whoever sends it should know, and pass on the limits. */
function NotReady({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const words = useWords("handOver");
  const standingWords = useWords("standing");
  const stands = view.standings.get(kit.id);
  if (!stands || stands.standing === "ready") return null;
  const standing = standingInWords(stands, standingWords);
  return (
    <Notice
      tone="attention"
      title={
        standing.standing === "ready-with-limits"
          ? words.goesLimited({ kit: kit.name })
          : words.notReady({ kit: kit.name })
      }
    >
      <p>
        <StandingMark standing={standing.standing} />
      </p>
      <p>{standing.because[0]?.text}</p>
      {standing.limits.map((limit) => (
        <p key={limit}>{words.tellVessel({ limit })}</p>
      ))}
    </Notice>
  );
}
