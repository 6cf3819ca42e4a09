import type { LinksReply, NewLinkReply } from "#station";
import { useCallback, useEffect, useState } from "react";
import { useStation, useThisDevice } from "../../device/index.ts";
import type { Reply } from "../../device/sync/server-door.ts";
import { Button, ButtonRow, Section, Timestamp, useDoing } from "../../parts/index.ts";
import { MadeLink } from "./made-link.tsx";

const PATH = "/api/wall/links";

/** Links to the walls of places, for screens where nobody signs in: made here, shown once, withdrawn here. */
export function WallLinks() {
  const { places } = useStation();
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [links, setLinks] = useState<Reply<LinksReply>>();
  const [made, setMade] = useState<Reply<NewLinkReply>>();
  const list = useCallback(() => door.ask<LinksReply>({ method: "GET", path: PATH }), [door]);
  const look = async () => setLinks(await list());
  useEffect(() => void list().then(setLinks), [list]);
  const make = (place: string) =>
    run(async () => {
      setMade(await door.ask<NewLinkReply>({ method: "POST", path: PATH, json: { place } }));
      await look();
    });
  const withdraw = (id: string) =>
    run(async () => {
      await door.ask({ method: "DELETE", path: `${PATH}/${id}` });
      await look();
    });
  const held = links?.kind === "answered" ? links.value.links : [];
  return (
    <Section title="Wall of a place">
      <p>
        A screen at the station shows strength, the order in which to take kits and this week's work, without a sign-in.
        Whoever has the link sees that and nothing else.
      </p>
      <ButtonRow>
        {places.map(({ id, name }) => (
          <Button key={id} isBusy={isBusy} onPress={() => void make(id)}>
            Make a link for {name}
          </Button>
        ))}
      </ButtonRow>
      <MadeLink reply={made} title="Open this address on the screen. It is shown here once." />
      {links !== undefined && links.kind !== "answered" && <p>The links are told once the station can be reached.</p>}
      {held.map(({ id, place, created }) => {
        const name = places.find((one) => one.id === place)?.name ?? place ?? "a place";
        return (
          <ButtonRow key={id}>
            <span>
              {name}, made <Timestamp at={created} />
            </span>
            <Button isBusy={isBusy} onPress={() => void withdraw(id)} label={`Withdraw the link for ${name}`}>
              Withdraw
            </Button>
          </ButtonRow>
        );
      })}
    </Section>
  );
}
