import { takeWork, type DueLine } from "#station";
import { useWords } from "#web/language/index.ts";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ErrorBox, useDoing } from "#web/parts/index.ts";

/** Takes a line for oneself, or lays down what one took. */
export function TakeButton({ line }: { readonly line: DueLine }) {
  const words = useWords("work");
  const { me } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const isMine = line.said.takers.some(({ person }) => person === me.id);
  const take = () => void doing.run(() => carryOut((at) => takeWork(at, line, isMine ? undefined : me.id)));
  return (
    <>
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <Button
        onPress={take}
        isBusy={doing.isBusy}
        isPressed={isMine}
        label={isMine ? words.layDownKit({ kit: line.kit.name }) : words.takeKit({ kit: line.kit.name })}
      >
        {isMine ? words.layDown() : words.take()}
      </Button>
    </>
  );
}
