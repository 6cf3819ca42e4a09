import { isInputError } from "#base";
import { loadPattern, nameOf, openDraft, type Pattern } from "#kit";
import type { DraftsReply } from "#station";
import type { Words } from "#words";
import { useCallback, useEffect, useId, useState } from "react";
import { useWords } from "#web/language/index.ts";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { DRY_KIT, DryDevice, useStation, useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { findKit, nameOf as nameOfPerson, withTurnaround } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, GloveRow, Notice, Page, Section } from "#web/parts/index.ts";
import { Runner } from "./runner/runner.tsx";
import "./dry-run.css";

/** Walks a draft in the runner itself, over a station in memory. */
export default function DryRunPage() {
  const [walked, walk] = useState<Pattern>();
  const words = useWords("turnaroundRecord");
  if (walked === undefined) return <PickDraft onPick={walk} />;
  return (
    <div className="dry-run">
      <p className="dry-run-told" role="note">
        <span>
          <strong>{words.dryRun()}</strong> {words.dryRunMore()}
        </span>
        <Button kind="quiet" onPress={() => walk(undefined)}>
          {words.endIt()}
        </Button>
      </p>
      <DryDevice pattern={walked}>
        <Walk onEnd={() => walk(undefined)} />
      </DryDevice>
    </div>
  );
}

function Walk({ onEnd }: { readonly onEnd: () => void }) {
  const at = findKit(useStation(), DRY_KIT);
  const words = useWords("turnaroundRecord");
  const open = at && withTurnaround(at);
  if (open) return <Runner key={open.turnaround.id} open={open} />;
  return (
    <Page title={words.dryOver()} frame="full">
      <Notice title={words.dryOverNews()}>
        <p>{words.dryOverMore()}</p>
      </Notice>
      <GloveRow>
        <Button kind="primary" onPress={onEnd}>
          {words.backToDrafts()}
        </Button>
      </GloveRow>
    </Page>
  );
}

interface Laid {
  readonly text: string;
  readonly beside: Readonly<Record<string, string>>;
}

/** The draft of this device, those laid out at the station, or a file. */
function PickDraft({ onPick }: { readonly onPick: (pattern: Pattern) => void }) {
  const view = useStation();
  const words = useWords("turnaroundRecord");
  const drafts = useLaidOut();
  const [error, setError] = useState<unknown>();
  const own = patternDraft.read();
  const pick = (laid: Laid) => {
    try {
      onPick(patternOf(laid));
    } catch (cause) {
      if (!isInputError(cause)) throw cause;
      setError(cause);
    }
  };
  return (
    <Page title={words.dryOfDraft()} back={{ to: "/patterns", label: words.patterns() }}>
      <p>{words.dryOfDraftMore()}</p>
      <ErrorBox error={error} title={words.notWalked()} />
      <Section title={words.whichDraft()}>
        <div className="dry-run-picks">
          {own.text !== "" && (
            <Button kind="primary" wide onPress={() => pick({ text: own.text, beside: patternDraft.beside() })}>
              {words.onThisDevice({ draft: titleOf(own.text, words) })}
            </Button>
          )}
          {drafts.map((one) => (
            <Button key={one.by} kind="primary" wide onPress={() => pick(one)}>
              {words.laidOutBy({ person: nameOfPerson(view, one.by), draft: titleOf(one.text, words) })}
            </Button>
          ))}
          <PickFile onPick={(text) => pick({ text, beside: {} })} />
        </div>
      </Section>
    </Page>
  );
}

/** What is laid out at the station; nothing while it cannot be reached. */
function useLaidOut(): DraftsReply["drafts"] {
  const { door } = useThisDevice();
  const [drafts, setDrafts] = useState<DraftsReply["drafts"]>([]);
  const take = useCallback((reply: Reply<DraftsReply>) => {
    if (reply.kind === "answered") setDrafts(reply.value.drafts);
  }, []);
  useEffect(() => void door.ask<DraftsReply>({ method: "GET", path: "/api/patterns/drafts" }).then(take), [door, take]);
  return drafts;
}

function PickFile({ onPick }: { readonly onPick: (text: string) => void }) {
  const id = useId();
  const words = useWords("turnaroundRecord");
  return (
    <p>
      <label htmlFor={id} className="button button-plain">
        {words.fromFile()}
      </label>
      <input
        id={id}
        className="for-readers-only"
        type="file"
        accept=".yaml,.yml"
        onChange={({ target }) => {
          void target.files?.[0]?.text().then(onPick);
          target.value = "";
        }}
      />
    </p>
  );
}

/** @throws InputError with every error that keeps it from being read */
function patternOf({ text, beside }: Laid): Pattern {
  return loadPattern(text, nameOf(openDraft(text).value), (name) => {
    const file = name.split("/").at(-1) ?? "";
    return Object.hasOwn(beside, file) ? beside[file] : undefined;
  });
}

/** "ossel-200, version 3", read off the file's own lines: the whole file takes too long to read for a button. */
function titleOf(text: string, words: Words["turnaroundRecord"]): string {
  const field = (name: string) => new RegExp(`^${name}: *([^#\\r\\n]+)`, "m").exec(text)?.[1]?.trim() ?? "?";
  return words.draftVersion({ pattern: field("id"), version: field("version") });
}
