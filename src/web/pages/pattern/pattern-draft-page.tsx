import { valueAt } from "#kit";
import type { IssueReply } from "#station";
import { useMemo, useState } from "react";
import { useSearchParams } from "wouter";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { useStation, useThisDevice } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, ErrorBox, Notice, Page } from "#web/parts/index.ts";
import { FORM, WritingContext } from "./form/bench-context.ts";
import { download } from "./form/draft-files.ts";
import { IssuePart } from "./form/issue-part.tsx";
import { LintList } from "./form/lint-list.tsx";
import { PartForm } from "./form/part-form.tsx";
import { PartsList } from "./form/parts-list.tsx";
import { useBench } from "./form/use-bench.ts";
import "./form/form.css";

const BACK = { to: "/patterns", label: "Patterns" };

/** A pattern written by form: its parts, the form of one, and the lint beside it. */
export default function PatternDraftPage() {
  // In the address: the device reads its patterns anew after an issue, and what only this page knew would be gone.
  const [search, setSearch] = useSearchParams();
  const { sendNow } = useThisDevice();
  const issued = search.get("issued");
  if (issued !== null && patternDraft.read().text === "") return <Issued pattern={issued} />;
  const end = ({ pattern }: IssueReply) => {
    patternDraft.drop();
    setSearch({ issued: pattern }, { replace: true });
    sendNow();
  };
  return patternDraft.read().text === "" ? <NoDraft /> : <Draft onIssued={end} />;
}

function NoDraft() {
  return (
    <Page title="A pattern's draft" back={BACK}>
      <EmptyState title="No pattern is being written on this device">
        <p>Begin one under Patterns: from a version of the station, from a file, or from nothing.</p>
      </EmptyState>
    </Page>
  );
}

function Draft({ onIssued }: { readonly onIssued: (reply: IssueReply) => void }) {
  const bench = useBench();
  const [shown, show] = useState<readonly (string | number)[]>([]);
  const writing = useMemo(() => ({ bench, form: FORM, shown, show }), [bench, shown]);
  return (
    <Page title={titleOf(bench.value)} back={BACK}>
      <WritingContext value={writing}>
        <p className="quiet">
          Kept on this device from the first letter on. Nothing of it is at the station until it is issued.
        </p>
        <ButtonRow>
          <Button onPress={() => void bench.settled().then(download)}>Download the file</Button>
          <Button isDisabled={bench.undos === 0} onPress={bench.undo}>
            Take the last change back
          </Button>
        </ButtonRow>
        <IssuePart onIssued={onIssued} />
        <ErrorBox error={bench.error} title="Not changed" />
        <div className="form-desk">
          <PartsList />
          {bench.value !== undefined && <PartForm />}
          <LintList />
        </div>
      </WritingContext>
    </Page>
  );
}

/** "Draft: Ossel 200, version 3" */
function titleOf(value: unknown): string {
  const [name, version] = ["name", "version"].map((field) => valueAt(value, [field]));
  return name === undefined ? "A pattern's draft" : `Draft: ${String(name)}, version ${String(version)}`;
}

/** Kits stay on their version: the way to each that could be moved. */
function Issued({ pattern }: { readonly pattern: string }) {
  const { kits } = useStation();
  const id = pattern.replace(/@.*/, "");
  const older = kits.filter((kit) => kit.pattern.startsWith(`${id}@`) && kit.pattern !== pattern);
  return (
    <Page title={`${pattern} is issued`} back={BACK}>
      <Notice title="Every device has it with its next exchange" isNews>
        <p>Kits stay on the version they are built to. A keeper moves each, once what is new was looked at.</p>
      </Notice>
      {older.length > 0 && (
        <ButtonRow>
          {older.map((kit) => (
            <ButtonLink key={kit.id} to={`/kit/${kit.id}/keep`}>
              {kit.name}: what differs, and move it
            </ButtonLink>
          ))}
        </ButtonRow>
      )}
    </Page>
  );
}
