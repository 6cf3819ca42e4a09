import { useWords } from "#web/language/index.ts";
import { Button } from "#web/parts/index.ts";
import { saySooner, type SoonerBoat } from "./sooner-boat.ts";

interface SoonerBoatLineProps {
  readonly sooner: SoonerBoat | undefined;
  readonly onChoose: (boat: string) => void;
}

/** The boat that has a pump there sooner, with the way to choose her; in the page before it has words, so that they are read out. */
export function SoonerBoatLine({ sooner, onChoose }: SoonerBoatLineProps) {
  const words = useWords("launch");
  return (
    <>
      <output className="launch-odd">{sooner && saySooner(sooner, words)}</output>
      {sooner && (
        <Button onPress={() => onChoose(sooner.boat.id)}>{words.chooseBoat({ boat: sooner.boat.name })}</Button>
      )}
    </>
  );
}
