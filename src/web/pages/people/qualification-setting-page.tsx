import { formatSpan } from "#base";
import type { Bodies, Qualification } from "#readiness";
import { retireQualification, setQualification } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useLocation, useParams } from "wouter";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, EmptyState, ErrorBox, Page, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { isSpan, spanFault } from "#web/parts/fields/span-fault.ts";
import { TiePick } from "./tie-pick.tsx";
import "./people.css";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

type Setting = Bodies["qualification-set"];
type Draft = { readonly [Part in keyof Setting]: Setting[Part] | undefined } & Pick<Setting, "name" | "ties" | "every">;

/** A qualification set, or written anew. */
export default function QualificationSettingPage() {
  const words = useWords("qualifications");
  const { qualification: id } = useParams<{ readonly qualification?: string }>();
  const { qualifications } = useStation();
  const known = qualifications.find((one) => one.id === id);
  const title = known ? words.changeNamed({ qualification: known.name }) : words.newTitle();
  return (
    <Page title={title} back={{ to: "/qualifications", label: words.title() }}>
      {id !== undefined && !known ? (
        <EmptyState title={words.unknown()} />
      ) : (
        <SettingForm key={known?.id ?? "new"} {...(known && { known })} />
      )}
      {known && !known.retired && <Retire known={known} />}
    </Page>
  );
}

function draftOf(known: Qualification | undefined): Draft {
  if (!known) return { name: "", ties: [], every: "12 months", seenBy: undefined, alone: undefined };
  const { name, ties, every, seenBy, alone } = known;
  return { name, ties, every: formatSpan(every), seenBy, alone };
}

function settingOf({ name, ties, every, seenBy, alone }: Draft): Setting | undefined {
  const isWhole = name.trim() !== "" && ties.length > 0 && isSpan(every);
  if (!isWhole || seenBy === undefined || alone === undefined) return undefined;
  return { name: name.trim(), ties, every: every.trim(), seenBy, alone };
}

function SettingForm({ known }: { readonly known?: Qualification }) {
  const words = useWords("qualifications");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [draft, setDraft] = useState(() => draftOf(known));
  const setting = settingOf(draft);
  const save = async () => {
    if (!setting) return;
    const id = known?.id ?? uuidv7();
    if (await doing.run(() => carryOut((at) => setQualification(at, id, setting)))) go("/qualifications");
  };
  return (
    <div className="people-form">
      <SettingFields draft={draft} onChange={(change) => setDraft({ ...draft, ...change })} />
      <ErrorBox error={doing.error} title={words.notSaved()} />
      <Button kind="primary" isDisabled={!setting} isBusy={doing.isBusy} onPress={() => void save()}>
        {words.save()}
      </Button>
    </div>
  );
}

interface FieldsProps {
  readonly draft: Draft;
  readonly onChange: (change: Partial<Draft>) => void;
}

function SettingFields({ draft, onChange }: FieldsProps) {
  const words = useWords("qualifications");
  const view = useStation();
  const fault = spanFault(draft.every, useWords("parts"));
  return (
    <>
      <TextField label={words.name()} value={draft.name} onChange={(name) => onChange({ name })} limit={80} />
      <TiePick view={view} ties={draft.ties} onChange={(ties) => onChange({ ties })} />
      <TextField
        label={words.heldSoLong()}
        value={draft.every}
        onChange={(every) => onChange({ every })}
        limit={40}
        isShort
        {...(fault !== undefined && { fault })}
      />
      <Choice
        label={words.whoSecond()}
        options={seenBy(words)}
        value={draft.seenBy}
        onChange={(seenBy) => onChange({ seenBy })}
      />
      <Choice
        label={words.whereNobody()}
        options={alone(words)}
        value={draft.alone}
        onChange={(alone) => onChange({ alone })}
      />
    </>
  );
}

const seenBy = (words: Words["qualifications"]) =>
  [
    { value: "holders", label: words.holders() },
    { value: "keepers", label: words.keepers() },
  ] as const;

const alone = (words: Words["qualifications"]) =>
  [
    { value: "with-note", label: words.withNote(), note: words.withNoteMore() },
    { value: "never", label: words.never(), note: words.neverMore() },
  ] as const;

function Retire({ known }: { readonly known: Qualification }) {
  const words = useWords("qualifications");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [reason, setReason] = useState("");
  const retire = async () => {
    if (await doing.run(() => carryOut((at) => retireQualification(at, known.id, reason.trim()))))
      go("/qualifications");
  };
  return (
    <Section title={words.takeOff()}>
      <p>{words.takeOffMore()}</p>
      <TextField label={words.why()} value={reason} onChange={setReason} limit={1000} />
      <ErrorBox error={doing.error} title={words.notRetired()} />
      <div>
        <Button tone="grave" isDisabled={reason.trim() === ""} isBusy={doing.isBusy} onPress={() => void retire()}>
          {words.retire({ qualification: known.name })}
        </Button>
      </div>
    </Section>
  );
}
