import type { LinksReply, NewLinkReply } from "#station";
import { useCallback, useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useDoing } from "#web/parts/index.ts";

/**
 * Links of one purpose that the station keeps: listed, made and withdrawn. A link that was made is forgotten with the
 * first that is withdrawn, so that no dead address stays on the screen.
 *
 * @param path - of the station's own route
 */
export function useLinks(path: string) {
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [links, setLinks] = useState<Reply<LinksReply>>();
  const [made, setMade] = useState<Reply<NewLinkReply>>();
  const [withdrawn, setWithdrawn] = useState<Reply<unknown>>();
  const list = useCallback(() => door.ask<LinksReply>({ method: "GET", path }), [door, path]);
  useEffect(() => void list().then(setLinks), [list]);
  const make = (json?: object) =>
    run(async () => {
      setWithdrawn(undefined);
      setMade(await door.ask<NewLinkReply>({ method: "POST", path, ...(json && { json }) }));
      setLinks(await list());
    });
  const withdraw = (id: string) =>
    run(async () => {
      const reply = await door.ask({ method: "DELETE", path: `${path}/${id}` });
      setWithdrawn(reply);
      if (reply.kind === "answered") setMade(undefined);
      setLinks(await list());
    });
  const held = links?.kind === "answered" ? links.value.links : [];
  const isKnown = links === undefined || links.kind === "answered";
  return { isBusy, made, withdrawn, held, isKnown, make, withdraw };
}
