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
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

const backIn = (words: Words["patterns"]) => ({ to: "/patterns", label: words.title() });

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
  const words = useWords("patterns");
  return (
    <Page title={words.aDraft()} back={backIn(words)}>
      <EmptyState title={words.noDraft()}>
        <p>{words.noDraftMore()}</p>
      </EmptyState>
    </Page>
  );
}

function Draft({ onIssued }: { readonly onIssued: (reply: IssueReply) => void }) {
  const words = useWords("patterns");
  const bench = useBench();
  const [shown, show] = useState<readonly (string | number)[]>([]);
  const form = useWords("patternForm");
  const fields = useWords("patternFields");
  const entries = useWords("patternEntries");
  const writing = useMemo(
    () => ({ bench, words: { form, fields, entries }, form: FORM, shown, show }),
    [bench, form, fields, entries, shown],
  );
  return (
    <Page title={titleOf(bench.value, words)} back={backIn(words)}>
      <WritingContext value={writing}>
        <p className="quiet">{words.draftKept()}</p>
        <ButtonRow>
          <Button onPress={() => void bench.settled().then(download)}>{words.download()}</Button>
          <Button isDisabled={bench.undos === 0} onPress={bench.undo}>
            {words.takeBack()}
          </Button>
        </ButtonRow>
        <IssuePart onIssued={onIssued} />
        <ErrorBox error={bench.error} title={words.notChanged()} />
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
function titleOf(value: unknown, words: Words["patterns"]): string {
  const [name, version] = ["name", "version"].map((field) => valueAt(value, [field]));
  return name === undefined ? words.aDraft() : words.draftTitle({ name: String(name), version: String(version) });
}

/** Kits stay on their version: the way to each that could be moved. */
function Issued({ pattern }: { readonly pattern: string }) {
  const words = useWords("patterns");
  const { kits } = useStation();
  const id = pattern.replace(/@.*/, "");
  const older = kits.filter((kit) => kit.pattern.startsWith(`${id}@`) && kit.pattern !== pattern);
  return (
    <Page title={words.issued({ pattern })} back={backIn(words)}>
      <Notice title={words.issuedNews()} isNews>
        <p>{words.issuedMore()}</p>
      </Notice>
      {older.length > 0 && (
        <ButtonRow>
          {older.map((kit) => (
            <ButtonLink key={kit.id} to={`/kit/${kit.id}/keep`}>
              {words.moveKit({ kit: kit.name })}
            </ButtonLink>
          ))}
        </ButtonRow>
      )}
    </Page>
  );
}
