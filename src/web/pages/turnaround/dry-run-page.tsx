import { isInputError } from "#base";
import { loadPattern, nameOf, openDraft, type Pattern } from "#kit";
import type { DraftsReply } from "#station";
import { useCallback, useEffect, useId, useState } from "react";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { DRY_KIT, DryDevice, useStation, useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { findKit, nameOf as nameOfPerson, withTurnaround } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, GloveRow, Notice, Page, Section } from "#web/parts/index.ts";
import { Runner } from "./runner/runner.tsx";
import "./dry-run.css";

const BACK = { to: "/patterns", label: "Patterns" };

/** Walks a draft in the runner itself, over a station in memory. */
export default function DryRunPage() {
  const [walked, walk] = useState<Pattern>();
  if (walked === undefined) return <PickDraft onPick={walk} />;
  return (
    <div className="dry-run">
      <p className="dry-run-told" role="note">
        <span>
          <strong>Dry run: nothing is written to the log.</strong> Start no engine and open no fuel for it.
        </span>
        <Button kind="quiet" onPress={() => walk(undefined)}>
          End it
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
  const open = at && withTurnaround(at);
  if (open) return <Runner key={open.turnaround.id} open={open} />;
  return (
    <Page title="The dry run is over" frame="full">
      <Notice title="Nothing of it was written">
        <p>The draft is as it was. Go back to it, or walk it again.</p>
      </Notice>
      <GloveRow>
        <Button kind="primary" onPress={onEnd}>
          Back to the drafts
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
    <Page title="Dry run of a draft" back={BACK}>
      <p>
        Every line, clock and caution as in a turnaround, on a kit that is nowhere. Nothing is written to the log,
        nothing is sent, and it is gone when the page is left.
      </p>
      <ErrorBox error={error} title="It cannot be walked yet" />
      <Section title="Which draft?">
        <div className="dry-run-picks">
          {own.text !== "" && (
            <Button kind="primary" wide onPress={() => pick({ text: own.text, beside: patternDraft.beside() })}>
              On this device: {titleOf(own.text)}
            </Button>
          )}
          {drafts.map((one) => (
            <Button key={one.by} kind="primary" wide onPress={() => pick(one)}>
              Laid out by {nameOfPerson(view, one.by)}: {titleOf(one.text)}
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
  return (
    <p>
      <label htmlFor={id} className="button button-plain">
        From a pattern file
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

/** "ossel-200@3", read off the file's own lines: the whole file takes too long to read for a button. */
function titleOf(text: string): string {
  const field = (name: string) => new RegExp(`^${name}: *([^#\\r\\n]+)`, "m").exec(text)?.[1]?.trim() ?? "?";
  return `${field("id")}, version ${field("version")}`;
}
