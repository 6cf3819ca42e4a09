import type { LinksReply, NewLinkReply } from "#station";
import { useCallback, useEffect, useState } from "react";
import { useThisDevice } from "../../device/index.ts";
import type { Reply } from "../../device/sync/server-door.ts";
import { Button, ButtonRow, Section, Timestamp, useDoing } from "../../parts/index.ts";
import { MadeLink } from "./made-link.tsx";

const PATH = "/api/calendar/links";

/** A person's own calendar by a secret address: made here, shown once, withdrawn here. */
export function OwnCalendar() {
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [links, setLinks] = useState<Reply<LinksReply>>();
  const [made, setMade] = useState<Reply<NewLinkReply>>();
  const list = useCallback(() => door.ask<LinksReply>({ method: "GET", path: PATH }), [door]);
  const look = async () => setLinks(await list());
  useEffect(() => void list().then(setLinks), [list]);
  const make = () =>
    run(async () => {
      setMade(await door.ask<NewLinkReply>({ method: "POST", path: PATH }));
      await look();
    });
  const withdraw = (id: string) =>
    run(async () => {
      await door.ask({ method: "DELETE", path: `${PATH}/${id}` });
      setMade(undefined);
      await look();
    });
  const held = links?.kind === "answered" ? links.value.links : [];
  return (
    <Section title="Your calendar">
      <p>
        Work due, the plan, musters and what lapses, in the calendar program that you use. Whoever has the address reads
        that and nothing else: give it to nobody, and withdraw it when a device with it is lost.
      </p>
      <ButtonRow>
        <Button isBusy={isBusy} onPress={() => void make()}>
          Make an address for your calendar
        </Button>
      </ButtonRow>
      <MadeLink reply={made} title="Add this address as a calendar that is subscribed to. It is shown here once." />
      {links !== undefined && links.kind !== "answered" && (
        <p>The addresses are told once the station can be reached.</p>
      )}
      {held.map(({ id, created }) => (
        <ButtonRow key={id}>
          <span>
            An address, made <Timestamp at={created} />
          </span>
          <Button isBusy={isBusy} onPress={() => void withdraw(id)} label="Withdraw this address">
            Withdraw
          </Button>
        </ButtonRow>
      ))}
    </Section>
  );
}
