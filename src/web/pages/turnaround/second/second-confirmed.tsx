import type { SecondSaid } from "#readiness";
import { useState } from "react";
import { useWords, withParts } from "#web/language/index.ts";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { Button, ErrorBox, Notice, Timestamp, useDoing } from "#web/parts/index.ts";
import { PinPad } from "#web/way-in/pin-pad.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface SecondConfirmedProps {
  readonly open: OpenKit;
  readonly said: SecondSaid;
}

/** The second person's own word that they saw it, or the ways to give it. Nothing waits for it. */
export function SecondConfirmed({ open, said }: SecondConfirmedProps) {
  const { second, confirmed } = said;
  const words = useWords("turnaroundEnd");
  if (second === undefined) return null;
  if (confirmed === undefined) return <ToConfirm open={open} said={said} name={second.name} />;
  return (
    <p>
      {withParts(
        (part) => (confirmed.byPin ? words.confirmedByPin : words.confirmedOnOwn)({ ...part, person: second.name }),
        { at: <Timestamp at={confirmed.at} /> },
      )}
    </p>
  );
}

function ToConfirm({ open, said, name }: SecondConfirmedProps & { readonly name: string }) {
  const words = useWords("turnaroundEnd");
  return (
    <details>
      <summary>{words.notConfirmedYet({ person: name })}</summary>
      <p>{words.confirmHow({ person: name })}</p>
      <ByPin open={open} said={said} name={name} />
    </details>
  );
}

/** Proved by the station, so it takes a network. */
function ByPin({ open, said, name }: SecondConfirmedProps & { readonly name: string }) {
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
  if (reply?.kind === "answered") return <Notice title={words.confirmed({ person: name })} isNews />;
  return (
    <>
      <PinPad label={words.pinOf({ person: name })} value={pin} onChange={setPin} />
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
