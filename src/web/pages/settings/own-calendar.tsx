import { Button, ButtonRow, Section, Timestamp } from "#web/parts/index.ts";
import { MadeLink, NotAnswered } from "./made-link.tsx";
import { useLinks } from "./use-links.ts";

/** A person's own calendar by a secret address: made here, shown once, withdrawn here. */
export function OwnCalendar() {
  const { isBusy, made, withdrawn, held, isKnown, make, withdraw } = useLinks("/api/calendar/links");
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
      <NotAnswered reply={withdrawn} />
      {!isKnown && <p>The addresses are told once the station can be reached.</p>}
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
