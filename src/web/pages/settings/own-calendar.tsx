import { useWords, withParts } from "#web/language/index.ts";
import { Button, ButtonRow, Section, Timestamp } from "#web/parts/index.ts";
import { MadeLink, NotAnswered } from "./made-link.tsx";
import { useLinks } from "./use-links.ts";

/** A person's own calendar by a secret address: made here, shown once, withdrawn here. */
export function OwnCalendar() {
  const words = useWords("settings");
  const { isBusy, made, withdrawn, held, isKnown, make, withdraw } = useLinks("/api/calendar/links");
  return (
    <Section title={words.calendar()}>
      <p>{words.calendarMore()}</p>
      <ButtonRow>
        <Button isBusy={isBusy} onPress={() => void make()}>
          {words.makeAddress()}
        </Button>
      </ButtonRow>
      <MadeLink reply={made} title={words.addressMade()} />
      <NotAnswered reply={withdrawn} />
      {!isKnown && <p>{words.addressesUnknown()}</p>}
      {held.map(({ id, created }) => (
        <ButtonRow key={id}>
          <span>{withParts(words.addressAt, { at: <Timestamp at={created} /> })}</span>
          <Button isBusy={isBusy} onPress={() => void withdraw(id)} label={words.withdrawAddress()}>
            {words.withdraw()}
          </Button>
        </ButtonRow>
      ))}
    </Section>
  );
}
