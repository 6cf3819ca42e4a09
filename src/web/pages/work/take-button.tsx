import { takeWork, type DueLine } from "#station";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ErrorBox, useDoing } from "#web/parts/index.ts";

/** Takes a line for oneself, or lays down what one took. */
export function TakeButton({ line }: { readonly line: DueLine }) {
  const { me } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const isMine = line.said.takers.some(({ person }) => person === me.id);
  const take = () => void doing.run(() => carryOut((at) => takeWork(at, line, isMine ? undefined : me.id)));
  return (
    <>
      <ErrorBox error={doing.error} title="Not written down" />
      <Button
        onPress={take}
        isBusy={doing.isBusy}
        isPressed={isMine}
        label={isMine ? `Lay down ${line.kit.name}` : `Take ${line.kit.name}`}
      >
        {isMine ? "Lay it down" : "I take it"}
      </Button>
    </>
  );
}
