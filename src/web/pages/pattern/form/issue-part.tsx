import { familyOf, valueAt } from "#kit";
import { mayCall, PROBLEM, type IssueReply, type Problem } from "#station";
import { useState } from "react";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { useDeviceState, useStation, useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { AskingButton, Button, ButtonLink, ButtonRow, ErrorBox, Notice, useDoing } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";
import type { Words } from "#words";

const UPLOAD_MS = 60_000;

/** Laying the draft out to be walked, and issuing it to the station. */
export function IssuePart({ onIssued }: { readonly onIssued: (reply: IssueReply) => void }) {
  const {
    bench,
    words: { form: words },
  } = useWriting();
  const { me } = useStation();
  const { door } = useThisDevice();
  const { isBusy, error, run } = useDoing();
  const [problem, setProblem] = useState<Problem>();
  const [isLaidOut, setLaidOut] = useState(false);
  const whyNot = useWhyNot();
  const send = async (method: "POST" | "PUT", path: string) => {
    setProblem(undefined);
    const { base } = patternDraft.read();
    const json = { text: await bench.settled(), ...(base !== "" && { base }) };
    const reply = await door.ask<IssueReply>({ method, path, json, patience: UPLOAD_MS });
    if (reply.kind !== "answered") setProblem(problemOf(reply, words));
    return reply.kind === "answered" ? { isSent: true, told: reply.value } : { isSent: false };
  };
  const issue = () =>
    run(async () => {
      const { told } = await send("POST", "/api/patterns/issue");
      if (told) onIssued(told);
    });
  const layOut = () =>
    run(async () => setLaidOut(await send("PUT", "/api/patterns/draft").then(({ isSent }) => isSent)));
  if (!mayCall(me.role, "issue-pattern")) {
    return <Notice title={words.whoIssues()}>{words.giveFile()}</Notice>;
  }
  return (
    <>
      {whyNot !== undefined && <p className="form-why">{whyNot}</p>}
      <ButtonRow>
        <IssueButton isBusy={isBusy} isDisabled={whyNot !== undefined} onIssue={() => void issue()} />
        <Button isBusy={isBusy} onPress={() => void layOut()}>
          {words.layOut()}
        </Button>
        <ButtonLink to="/patterns/walk">{words.dryRun()}</ButtonLink>
      </ButtonRow>
      {isLaidOut && <output>{words.laidOut()}</output>}
      {problem && <Refused problem={problem} />}
      <ErrorBox error={error} title={words.notSent()} />
    </>
  );
}

interface IssueButtonProps {
  readonly isBusy: boolean;
  readonly isDisabled: boolean;
  readonly onIssue: () => void;
}

/** What issuing does to kits that are ready now, before it is done: it cannot be taken back. */
function IssueButton({ isBusy, isDisabled, onIssue }: IssueButtonProps) {
  const {
    bench,
    words: { form: words },
  } = useWriting();
  const { kits } = useStation();
  const [id, version] = ["id", "version"].map((field) => String(valueAt(bench.value, [field])));
  const older = kits.filter((kit) => familyOf(kit.pattern) === id).map(({ name }) => name);
  return (
    <AskingButton
      isBusy={isBusy}
      isDisabled={isDisabled}
      words={words.issueVersion({ version: version! })}
      title={words.issueAsk({ version: version! })}
      confirm={words.issueDo()}
      cancel={words.notYet()}
      onConfirm={onIssue}
    >
      <p>{words.issueMore()}</p>
      {older.length > 0 && <p>{words.olderKits({ kits: older.join(", ") })}</p>}
    </AskingButton>
  );
}

/** Why it cannot be issued now; nothing where it can. */
function useWhyNot(): string | undefined {
  const { bench, words } = useWriting();
  const device = useDeviceState();
  if (bench.faults === undefined || bench.isBehind) return words.form.lintReads();
  const errors = bench.faults.filter(({ weight }) => weight === "error").length;
  if (errors > 0) return words.form.lintErrors({ count: errors });
  const isOffline = device.kind === "signed-in" && device.reach.kind !== "online";
  return isOffline ? words.form.offline() : undefined;
}

function problemOf(reply: Exclude<Reply<unknown>, { kind: "answered" }>, words: Words["patternForm"]): Problem {
  if (reply.kind === "refused") return reply.problem;
  const message = words.unreachable({ because: reply.because });
  return { code: "WE-466", message, remedy: words.unreachableMore() };
}

function Refused({ problem }: { readonly problem: Problem }) {
  const { bench, words } = useWriting();
  const { nextVersion } = problem;
  return (
    <Notice tone="wrong" title={words.form.notSent()} isNews>
      <p>{problem.message}</p>
      <p>
        {problem.remedy} <span className="error-code">{problem.code}</span>
      </p>
      {problem.code === PROBLEM.otherVersion && nextVersion !== undefined && (
        <Button onPress={() => bench.change({ kind: "set", path: ["version"], value: nextVersion })}>
          {words.form.makeVersion({ version: nextVersion })}
        </Button>
      )}
    </Notice>
  );
}
