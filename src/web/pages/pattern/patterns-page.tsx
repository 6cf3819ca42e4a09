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
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** The station's patterns, and the one that is being written on this device. */
export default function PatternsPage() {
  const frame = useWords("frame");
  const words = useWords("patterns");
  const { patterns, me } = useStation();
  const begin = useBegin();
  const mayWrite = mayCall(me.role, "issue-pattern");
  const rows = newestOfEach([...patterns.values()]);
  return (
    <Page title={words.title()} back={{ to: "/settings", label: frame.settings() }}>
      <DraftHere />
      <ErrorBox error={begin.error} title={words.notBegun()} />
      <Section title={words.ofStation()}>
        <Table
          caption={words.table()}
          isCaptionHidden
          columns={columnsOf(begin, mayWrite, words)}
          rows={rows}
          rowKey={({ id }) => id}
        />
      </Section>
      {mayWrite && <BeginNew begin={begin} />}
      <Section title={words.dryRun()}>
        <p>{words.dryRunMore()}</p>
        <ButtonRow>
          <ButtonLink to="/patterns/walk">{words.walk()}</ButtonLink>
        </ButtonRow>
      </Section>
      <Replacing begin={begin} />
    </Page>
  );
}

function DraftHere() {
  const words = useWords("patterns");
  if (patternDraft.read().text === "") return null;
  return (
    <ButtonRow>
      <ButtonLink to="/patterns/draft">{words.goOn()}</ButtonLink>
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
  const words = useWords("patterns");
  return (
    <ConfirmDialog
      title={words.draftHere()}
      isOpen={begin.isWaiting}
      onClose={begin.leave}
      confirm={words.beginAnew()}
      tone="grave"
      onConfirm={begin.confirm}
    >
      <p>{words.draftHereMore()}</p>
    </ConfirmDialog>
  );
}

function columnsOf(begin: Begin, mayWrite: boolean, words: Words["patterns"]): readonly Column<Pattern>[] {
  return [
    { key: "name", head: words.pattern(), cell: ({ name }) => name },
    { key: "version", head: words.version(), cell: ({ version }) => <span className="tabular">{version}</span> },
    {
      key: "acts",
      head: words.whatToDo(),
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
  const words = useWords("patterns");
  const { door } = useThisDevice();
  const { patterns } = useStation();
  return (
    <ButtonRow>
      <ButtonLink kind="quiet" to={`/pattern/${pattern.id}`}>
        {words.reportCard()}
      </ButtonLink>
      {mayWrite && (
        <Button
          isBusy={begin.isBusy}
          label={words.writeNext({ pattern: pattern.name })}
          onPress={() => begin.begin(() => beginFrom(door, pattern, { patterns: patterns.values(), words }))}
        >
          {words.writeVersion({ version: pattern.version + 1 })}
        </Button>
      )}
    </ButtonRow>
  );
}

/** Lower-case words and digits joined by hyphens. */
const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

function BeginNew({ begin }: { readonly begin: Begin }) {
  const words = useWords("patterns");
  const { patterns } = useStation();
  const file = useId();
  const [id, setId] = useState("");
  const isTaken = [...patterns.values()].some((one) => one.id === id);
  const fault = isTaken ? words.idTaken() : words.idWords();
  const isWrong = id !== "" && (isTaken || !ID.test(id));
  return (
    <Section title={words.another()}>
      <div className="form-row">
        <TextField
          label={words.newId()}
          hint={words.newIdHint()}
          value={id}
          onChange={setId}
          limit={60}
          {...(isWrong && { fault })}
        />
        <Button isDisabled={id === "" || isWrong} onPress={() => begin.begin(() => beginEmpty(id))}>
          {words.beginEmpty()}
        </Button>
      </div>
      <p>
        <label htmlFor={file} className="button button-plain">
          {words.openFile()}
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
