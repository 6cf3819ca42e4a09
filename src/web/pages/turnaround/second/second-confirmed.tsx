import type { Step } from "#kit";
import { clockAt, type SecondSaid } from "#readiness";
import { useState } from "react";
import { useWords, withParts } from "#web/language/index.ts";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { Button, ErrorBox, Notice, Timestamp, useDoing } from "#web/parts/index.ts";
import { PinPad } from "#web/way-in/pin-pad.tsx";
import { useNow } from "#web/timing/index.ts";
import { whyNotAnswered } from "../runner/step-gate.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface SecondConfirmedProps {
  readonly open: OpenKit;
  readonly said: SecondSaid;
  /** The line it is about; absent at the sealing. */
  readonly step?: Step;
}

/** The second person's own word that they saw it, or the ways to give it. Nothing waits for it. */
export function SecondConfirmed({ open, said, step }: SecondConfirmedProps) {
  const { second, confirmed } = said;
  const words = useWords("turnaroundEnd");
  if (second === undefined) return null;
  if (confirmed === undefined) return <ToConfirm open={open} said={said} name={second.name} {...(step && { step })} />;
  return (
    <p>
      {withParts(
        (part) => (confirmed.byPin ? words.confirmedByPin : words.confirmedOnOwn)({ ...part, person: second.name }),
        { at: <Timestamp at={confirmed.at} /> },
      )}
    </p>
  );
}

function ToConfirm({ open, said, name, step }: SecondConfirmedProps & { readonly name: string }) {
  const words = useWords("turnaroundEnd");
  const held = useHeld(open, step);
  return (
    <details>
      <summary>{words.notConfirmedYet({ person: name })}</summary>
      <p>{words.confirmHow({ person: name })}</p>
      {held === undefined ? (
        <ByPin open={open} said={said} name={name} {...(step && { step })} />
      ) : (
        <p>{words.confirmAfter({ why: held })}</p>
      )}
    </details>
  );
}

/** Why nobody can have seen the line done yet: its clock is not over. */
function useHeld(open: OpenKit, step: Step | undefined): string | undefined {
  const words = useWords("turnaroundLine");
  const timer = step && clockAt(open, step.id);
  const now = useNow(timer?.started !== undefined);
  return step && whyNotAnswered(open, step, { now, words });
}

/** Proved by the station, so it takes a network. */
function ByPin({ open, said, name, step }: SecondConfirmedProps & { readonly name: string }) {
  const { door } = useThisDevice();
  const words = useWords("turnaroundEnd");
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [reply, setReply] = useState<Reply<unknown>>();
  const json = { kit: open.kit.id, turnaround: open.turnaround.id, named: said.entry, name, pin };
  const confirm = () =>
    doing.run(async () => {
      setReply(await door.ask({ method: "POST", path: "/api/second", json }));
      setPin("");
    });
  const about = { person: name, doer: open.view.me.name, what: said.qualification.name };
  const hint = step ? words.pinForLine({ ...about, line: step.line }) : words.pinFor(about);
  if (reply?.kind === "answered") return <Notice title={words.confirmed({ person: name })} isNews />;
  return (
    <>
      <PinPad label={words.pinOf({ person: name })} hint={hint} value={pin} onChange={setPin} />
      <ErrorBox error={doing.error} title={words.notConfirmed()} />
      <NotConfirmed reply={reply} />
      <Button isDisabled={pin === ""} isBusy={doing.isBusy} onPress={() => void confirm()}>
        {words.sawItDone()}
      </Button>
    </>
  );
}

function NotConfirmed({ reply }: { readonly reply: Reply<unknown> | undefined }) {
  const words = useWords("turnaroundEnd");
  if (reply === undefined || reply.kind === "answered") return null;
  const remedy = reply.kind === "refused" ? reply.problem.remedy : words.confirmLater();
  const title = reply.kind === "refused" ? reply.problem.message : words.notReached();
  return (
    <Notice tone="attention" title={title} isNews>
      <p>{remedy}</p>
    </Notice>
  );
}
