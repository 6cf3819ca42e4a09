import { useStation } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ButtonRow, Section, Timestamp } from "#web/parts/index.ts";
import { MadeLink, NotAnswered } from "./made-link.tsx";
import { useLinks } from "./use-links.ts";

/** Links to the walls of places, for screens where nobody signs in: made here, shown once, withdrawn here. */
export function WallLinks() {
  const { places } = useStation();
  const words = useWords("settings");
  const { isBusy, made, withdrawn, held, isKnown, make, withdraw } = useLinks("/api/wall/links");
  return (
    <Section title={words.wall()}>
      <p>{words.wallMore()}</p>
      <ButtonRow>
        {places.map(({ id, name }) => (
          <Button key={id} isBusy={isBusy} onPress={() => void make({ place: id })}>
            {words.makeLink({ place: name })}
          </Button>
        ))}
      </ButtonRow>
      <MadeLink reply={made} title={words.linkMade()} />
      <NotAnswered reply={withdrawn} />
      {!isKnown && <p>{words.linksUnknown()}</p>}
      {held.map(({ id, place, created }) => {
        const name = places.find((one) => one.id === place)?.name ?? place ?? words.aPlace();
        return (
          <ButtonRow key={id}>
            <span>
              {withParts((part) => words.linkAt({ ...part, place: name }), { at: <Timestamp at={created} /> })}
            </span>
            <Button isBusy={isBusy} onPress={() => void withdraw(id)} label={words.withdrawLink({ place: name })}>
              {words.withdraw()}
            </Button>
          </ButtonRow>
        );
      })}
    </Section>
  );
}
