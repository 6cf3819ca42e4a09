import { useStation } from "#web/device/index.ts";
import { Button, ButtonRow, Section, Timestamp } from "#web/parts/index.ts";
import { MadeLink, NotAnswered } from "./made-link.tsx";
import { useLinks } from "./use-links.ts";

/** Links to the walls of places, for screens where nobody signs in: made here, shown once, withdrawn here. */
export function WallLinks() {
  const { places } = useStation();
  const { isBusy, made, withdrawn, held, isKnown, make, withdraw } = useLinks("/api/wall/links");
  return (
    <Section title="Wall of a place">
      <p>
        A screen at the station shows strength, the order in which to take kits and this week's work, without a sign-in.
        Whoever has the link sees that and nothing else.
      </p>
      <ButtonRow>
        {places.map(({ id, name }) => (
          <Button key={id} isBusy={isBusy} onPress={() => void make({ place: id })}>
            Make a link for {name}
          </Button>
        ))}
      </ButtonRow>
      <MadeLink reply={made} title="Open this address on the screen. It is shown here once." />
      <NotAnswered reply={withdrawn} />
      {!isKnown && <p>The links are told once the station can be reached.</p>}
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
