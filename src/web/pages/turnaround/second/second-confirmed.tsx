import type { SecondSaid } from "#readiness";
import { useState } from "react";
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
  if (second === undefined) return null;
  if (confirmed === undefined) return <ToConfirm open={open} said={said} name={second.name} />;
  return (
    <p>
      {second.name} confirmed it {confirmed.byPin ? "by their own PIN" : "on a device of their own"},{" "}
      <Timestamp at={confirmed.at} />.
    </p>
  );
}

function ToConfirm({ open, said, name }: SecondConfirmedProps & { readonly name: string }) {
  return (
    <details>
      <summary>Not confirmed by {name} yet</summary>
      <p>{name} confirms it under Work due on a device of their own, or here by their PIN. The work goes on.</p>
      <ByPin open={open} said={said} name={name} />
    </details>
  );
}

/** Proved by the station, so it takes a network. */
function ByPin({ open, said, name }: SecondConfirmedProps & { readonly name: string }) {
  const { door } = useThisDevice();
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [reply, setReply] = useState<Reply<unknown>>();
  const json = { kit: open.kit.id, turnaround: open.turnaround.id, named: said.entry, name, pin };
  const confirm = () =>
    doing.run(async () => {
      setReply(await door.ask({ method: "POST", path: "/api/second", json }));
      setPin("");
    });
  if (reply?.kind === "answered") return <Notice title={`${name} confirmed it by their PIN`} isNews />;
  return (
    <>
      <PinPad label={`PIN of ${name}`} value={pin} onChange={setPin} />
      <ErrorBox error={doing.error} title="Not confirmed" />
      <NotConfirmed reply={reply} />
      <Button isDisabled={pin === ""} isBusy={doing.isBusy} onPress={() => void confirm()}>
        I saw it done
      </Button>
    </>
  );
}

function NotConfirmed({ reply }: { readonly reply: Reply<unknown> | undefined }) {
  if (reply === undefined || reply.kind === "answered") return null;
  const remedy = reply.kind === "refused" ? reply.problem.remedy : "Confirm it on a device of your own, or later.";
  const title = reply.kind === "refused" ? reply.problem.message : "The station could not be reached";
  return (
    <Notice tone="attention" title={title} isNews>
      <p>{remedy}</p>
    </Notice>
  );
}
