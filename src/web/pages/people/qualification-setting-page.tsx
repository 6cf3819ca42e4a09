import { formatSpan } from "#base";
import type { Bodies, Qualification } from "#readiness";
import { retireQualification, setQualification } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useLocation, useParams } from "wouter";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, EmptyState, ErrorBox, Page, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { spanFault } from "#web/parts/fields/span-fault.ts";
import { TiePick } from "./tie-pick.tsx";
import "./people.css";

type Setting = Bodies["qualification-set"];
type Draft = { readonly [Part in keyof Setting]: Setting[Part] | undefined } & Pick<Setting, "name" | "ties" | "every">;

/** A qualification set, or written anew. */
export default function QualificationSettingPage() {
  const { qualification: id } = useParams<{ readonly qualification?: string }>();
  const { qualifications } = useStation();
  const known = qualifications.find((one) => one.id === id);
  const title = known ? `Change ${known.name}` : "A qualification of the station";
  return (
    <Page title={title} back={{ to: "/qualifications", label: "Qualifications" }}>
      {id !== undefined && !known ? (
        <EmptyState title="The station has no such qualification" />
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
  const isWhole = name.trim() !== "" && ties.length > 0 && spanFault(every) === undefined;
  if (!isWhole || seenBy === undefined || alone === undefined) return undefined;
  return { name: name.trim(), ties, every: every.trim(), seenBy, alone };
}

function SettingForm({ known }: { readonly known?: Qualification }) {
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
      <ErrorBox error={doing.error} title="Not saved" />
      <Button kind="primary" isDisabled={!setting} isBusy={doing.isBusy} onPress={() => void save()}>
        Save the qualification
      </Button>
    </div>
  );
}

interface FieldsProps {
  readonly draft: Draft;
  readonly onChange: (change: Partial<Draft>) => void;
}

function SettingFields({ draft, onChange }: FieldsProps) {
  const view = useStation();
  const fault = spanFault(draft.every);
  return (
    <>
      <TextField label="Name" value={draft.name} onChange={(name) => onChange({ name })} limit={80} />
      <TiePick view={view} ties={draft.ties} onChange={(ties) => onChange({ ties })} />
      <TextField
        label="Held for so long after it was last done"
        value={draft.every}
        onChange={(every) => onChange({ every })}
        limit={40}
        isShort
        {...(fault !== undefined && { fault })}
      />
      <Choice
        label="Who may be the second person"
        options={SEEN_BY}
        value={draft.seenBy}
        onChange={(seenBy) => onChange({ seenBy })}
      />
      <Choice
        label="Where nobody can come"
        options={ALONE}
        value={draft.alone}
        onChange={(alone) => onChange({ alone })}
      />
    </>
  );
}

const SEEN_BY = [
  { value: "holders", label: "Who holds it" },
  { value: "keepers", label: "Who holds it, or a keeper" },
] as const;
const ALONE = [
  { value: "with-note", label: "Go on with a note", note: "It does not count for who did it." },
  { value: "never", label: "Do not go on", note: "A note is enough only once nobody at the station may see it done." },
] as const;

function Retire({ known }: { readonly known: Qualification }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [reason, setReason] = useState("");
  const retire = async () => {
    if (await doing.run(() => carryOut((at) => retireQualification(at, known.id, reason.trim()))))
      go("/qualifications");
  };
  return (
    <Section title="Take it off the list">
      <p>Nothing asks for it any more. What was done under it stays in the log.</p>
      <TextField label="Why" value={reason} onChange={setReason} limit={1000} />
      <ErrorBox error={doing.error} title="Not retired" />
      <div>
        <Button tone="grave" isDisabled={reason.trim() === ""} isBusy={doing.isBusy} onPress={() => void retire()}>
          Retire {known.name}
        </Button>
      </div>
    </Section>
  );
}
