import { newestOfEach, type Pattern } from "#kit";
import { mayCall } from "#station";
import { useId, useState } from "react";
import { useLocation } from "wouter";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { useStation, useThisDevice } from "#web/device/index.ts";
import {
  Button,
  ButtonLink,
  ButtonRow,
  ConfirmDialog,
  ErrorBox,
  Page,
  Section,
  TextField,
  useDoing,
} from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { beginEmpty, beginFrom, beginFromFile } from "./form/draft-files.ts";
import "./form/form.css";

/** The station's patterns, and the one that is being written on this device. */
export default function PatternsPage() {
  const { patterns, me } = useStation();
  const begin = useBegin();
  const mayWrite = mayCall(me.role, "issue-pattern");
  const rows = newestOfEach([...patterns.values()]);
  return (
    <Page title="Patterns" back={{ to: "/settings", label: "Settings" }}>
      <DraftHere />
      <ErrorBox error={begin.error} title="Not begun" />
      <Section title="Of this station">
        <Table
          caption="Patterns of this station"
          isCaptionHidden
          columns={columnsOf(begin, mayWrite)}
          rows={rows}
          rowKey={({ id }) => id}
        />
      </Section>
      {mayWrite && <BeginNew begin={begin} />}
      <Section title="Dry run">
        <p>Walks a draft line by line on this device, with clocks, and writes nothing.</p>
        <ButtonRow>
          <ButtonLink to="/patterns/walk">Walk a draft</ButtonLink>
        </ButtonRow>
      </Section>
      <Replacing begin={begin} />
    </Page>
  );
}

function DraftHere() {
  if (patternDraft.read().text === "") return null;
  return (
    <ButtonRow>
      <ButtonLink to="/patterns/draft">Go on with the draft on this device</ButtonLink>
    </ButtonRow>
  );
}

type Begin = ReturnType<typeof useBegin>;

/** Begins a draft; asks first where one is there already. */
function useBegin() {
  const [, go] = useLocation();
  const { isBusy, error, run } = useDoing();
  const [waiting, setWaiting] = useState<() => Promise<void> | void>();
  const doIt = (act: () => Promise<void> | void) =>
    run(async () => {
      await act();
      go("/patterns/draft");
    });
  const begin = (act: () => Promise<void> | void) => {
    if (patternDraft.read().text === "") void doIt(act);
    else setWaiting(() => act);
  };
  const confirm = () => {
    if (waiting) void doIt(waiting);
    setWaiting(undefined);
  };
  return { isBusy, error, begin, confirm, isWaiting: waiting !== undefined, leave: () => setWaiting(undefined) };
}

function Replacing({ begin }: { readonly begin: Begin }) {
  return (
    <ConfirmDialog
      title="A draft is on this device already"
      isOpen={begin.isWaiting}
      onClose={begin.leave}
      confirm="Begin anew"
      tone="grave"
      onConfirm={begin.confirm}
    >
      <p>Beginning another takes its place, and what was written is gone. Download its file first if it is wanted.</p>
    </ConfirmDialog>
  );
}

function columnsOf(begin: Begin, mayWrite: boolean): readonly Column<Pattern>[] {
  return [
    { key: "name", head: "Pattern", cell: ({ name }) => name },
    { key: "version", head: "Version", cell: ({ version }) => <span className="tabular">{version}</span> },
    {
      key: "acts",
      head: "What to do",
      isAct: true,
      cell: (pattern) => <Acts pattern={pattern} begin={begin} mayWrite={mayWrite} />,
    },
  ];
}

function Acts({
  pattern,
  begin,
  mayWrite,
}: {
  readonly pattern: Pattern;
  readonly begin: Begin;
  readonly mayWrite: boolean;
}) {
  const { door } = useThisDevice();
  const { patterns } = useStation();
  return (
    <ButtonRow>
      <ButtonLink kind="quiet" to={`/pattern/${pattern.id}`}>
        Report card
      </ButtonLink>
      {mayWrite && (
        <Button
          isBusy={begin.isBusy}
          label={`Write the next version of ${pattern.name}`}
          onPress={() => begin.begin(() => beginFrom(door, pattern, patterns.values()))}
        >
          Write version {pattern.version + 1}
        </Button>
      )}
    </ButtonRow>
  );
}

/** Lower-case words and digits joined by hyphens. */
const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

function BeginNew({ begin }: { readonly begin: Begin }) {
  const { patterns } = useStation();
  const file = useId();
  const [id, setId] = useState("");
  const isTaken = [...patterns.values()].some((one) => one.id === id);
  const fault = isTaken
    ? "The station has a pattern of this id: write its next version."
    : "Lower-case words joined by hyphens.";
  const isWrong = id !== "" && (isTaken || !ID.test(id));
  return (
    <Section title="Another pattern">
      <div className="form-row">
        <TextField
          label="Id of the new pattern"
          hint="Lower-case words joined by hyphens, such as bilge-kit. It never changes."
          value={id}
          onChange={setId}
          limit={60}
          {...(isWrong && { fault })}
        />
        <Button isDisabled={id === "" || isWrong} onPress={() => begin.begin(() => beginEmpty(id))}>
          Begin from nothing
        </Button>
      </div>
      <p>
        <label htmlFor={file} className="button button-plain">
          Open a pattern file
        </label>
        <input
          id={file}
          className="for-readers-only"
          type="file"
          accept=".yaml,.yml"
          onChange={({ target }) => {
            const [given] = target.files ?? [];
            if (given) begin.begin(() => beginFromFile(given));
            target.value = "";
          }}
        />
      </p>
    </Section>
  );
}
