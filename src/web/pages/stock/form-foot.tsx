import { Button, ButtonRow, ErrorBox, type useDoing } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

/** How a form of the shelves ends: what went wrong, what it writes, and the way out without writing. */
export function FormFoot(props: {
  readonly doing: ReturnType<typeof useDoing>;
  readonly failure: string;
  /** What the button that writes says. */
  readonly does: string;
  readonly isReady: boolean;
  readonly onSave: () => Promise<void>;
  readonly onLeave: () => void;
}) {
  const words = useWords("stockForms");
  const { doing } = props;
  return (
    <>
      <ErrorBox error={doing.error} title={props.failure} />
      <ButtonRow>
        <Button isDisabled={!props.isReady} isBusy={doing.isBusy} onPress={() => void props.onSave()}>
          {props.does}
        </Button>
        <Button kind="quiet" onPress={props.onLeave}>
          {words.leave()}
        </Button>
      </ButtonRow>
    </>
  );
}
