import type { MailReply, MailWishRequest } from "#station";
import { useCallback, useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useDoing } from "#web/parts/index.ts";

const PATH = "/api/mail";

/** What the station sends this person by mail: read from the station, and changed there. */
export function useMail() {
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [known, setKnown] = useState<MailReply>();
  const [reply, setReply] = useState<Reply<MailReply>>();
  const take = useCallback((answer: Reply<MailReply>) => {
    setReply(answer);
    if (answer.kind === "answered") setKnown(answer.value);
  }, []);
  const look = useCallback(() => door.ask<MailReply>({ method: "GET", path: PATH }).then(take), [door, take]);
  useEffect(() => void look(), [look]);
  const does = (method: "PUT" | "DELETE" | "POST", path: string, json?: MailWishRequest | { readonly id: string }) =>
    run(async () => take(await door.ask<MailReply>({ method, path, ...(json && { json }) })));
  return {
    isBusy,
    known,
    reply,
    look: () => run(look),
    save: (wish: MailWishRequest) => does("PUT", PATH, wish),
    stop: () => does("DELETE", PATH),
    sendAgain: (id: string) => does("POST", `${PATH}/again`, { id }),
    sendTrial: () => does("POST", `${PATH}/trial`),
  };
}
