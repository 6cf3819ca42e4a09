import { familyOf, valueAt } from "#kit";
import { mayCall, PROBLEM, type IssueReply, type Problem } from "#station";
import { useState } from "react";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { useDeviceState, useStation, useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { AskingButton, Button, ButtonLink, ButtonRow, ErrorBox, Notice, useDoing } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";

const UPLOAD_MS = 60_000;

/** Laying the draft out to be walked, and issuing it to the station. */
export function IssuePart({ onIssued }: { readonly onIssued: (reply: IssueReply) => void }) {
  const { bench } = useWriting();
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
    if (reply.kind !== "answered") setProblem(problemOf(reply));
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
    return (
      <Notice title="Keepers and administrators issue patterns">Download the file and give it to one of them.</Notice>
    );
  }
  return (
    <>
      {whyNot !== undefined && <p className="form-why">{whyNot}</p>}
      <ButtonRow>
        <IssueButton isBusy={isBusy} isDisabled={whyNot !== undefined} onIssue={() => void issue()} />
        <Button isBusy={isBusy} onPress={() => void layOut()}>
          Lay it out for a dry run
        </Button>
        <ButtonLink to="/patterns/walk">Dry run</ButtonLink>
      </ButtonRow>
      {isLaidOut && <output>Laid out: open “Walk a draft” under Patterns on any device of the station.</output>}
      {problem && <Refused problem={problem} />}
      <ErrorBox error={error} title="Not sent" />
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
  const { bench } = useWriting();
  const { kits } = useStation();
  const [id, version] = ["id", "version"].map((field) => String(valueAt(bench.value, [field])));
  const older = kits.filter((kit) => familyOf(kit.pattern) === id).map(({ name }) => name);
  return (
    <AskingButton
      isBusy={isBusy}
      isDisabled={isDisabled}
      words={`Issue version ${version} to the station`}
      title={`Issue version ${version}?`}
      confirm="Issue it"
      cancel="Not yet"
      onConfirm={onIssue}
    >
      <p>Every device has it with its next exchange, and it stays: what is wrong in it is mended by another version.</p>
      {older.length > 0 && (
        <p>
          These kits stay built to the version they are, and are ready with limits at most until a keeper moves each:{" "}
          {older.join(", ")}.
        </p>
      )}
    </AskingButton>
  );
}

/** Why it cannot be issued now; nothing where it can. */
function useWhyNot(): string | undefined {
  const { bench } = useWriting();
  const device = useDeviceState();
  if (bench.faults === undefined || bench.isBehind) return "The lint is reading it.";
  const errors = bench.faults.filter(({ weight }) => weight === "error").length;
  if (errors > 0) return `Not to be issued yet: ${errors === 1 ? "one error" : `${errors} errors`} of the lint.`;
  const isOffline = device.kind === "signed-in" && device.reach.kind !== "online";
  return isOffline ? "Not to be issued now: the station cannot be reached. The draft stays on this device." : undefined;
}

function problemOf(reply: Exclude<Reply<unknown>, { kind: "answered" }>): Problem {
  if (reply.kind === "refused") return reply.problem;
  const remedy = "The draft stays on this device. Issue it once there is a network.";
  return { code: "WE-466", message: `The station cannot be reached: ${reply.because}.`, remedy };
}

function Refused({ problem }: { readonly problem: Problem }) {
  const { bench } = useWriting();
  const { nextVersion } = problem;
  return (
    <Notice tone="wrong" title="Not sent" isNews>
      <p>{problem.message}</p>
      <p>
        {problem.remedy} <span className="error-code">{problem.code}</span>
      </p>
      {problem.code === PROBLEM.otherVersion && nextVersion !== undefined && (
        <Button onPress={() => bench.change({ kind: "set", path: ["version"], value: nextVersion })}>
          Make it version {nextVersion}
        </Button>
      )}
    </Notice>
  );
}
