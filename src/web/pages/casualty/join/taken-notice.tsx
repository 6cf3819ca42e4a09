import { useWords, withParts } from "#web/language/index.ts";
import { useStation, type TakenSheet } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, Notice, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { NotProved } from "./not-proved.tsx";
import { NotTaken } from "./not-taken.tsx";

interface TakenNoticeProps {
  readonly taken: TakenSheet;
  readonly onShow: () => void;
  readonly onAgain: () => void;
}

/** What came of a sheet that was read, and the way back: the other device has not had ours yet. */
export function TakenNotice({ taken, onShow, onAgain }: TakenNoticeProps) {
  const words = useWords("sheetJoin");
  const view = useStation();
  const { fresh, known, refused, by, device, made, sheet } = taken;
  const from = view.devices.find(({ id }) => id === device)?.name ?? words.unknownDevice();
  return (
    <>
      <Notice title={fresh.length === 0 ? words.nothingNew() : words.taken({ count: fresh.length })} isNews>
        <p>
          {withParts(words.takenFrom, {
            person: nameOf(view, by),
            device: from,
            at: <Timestamp at={made} as="time" />,
            known,
          })}
        </p>
        {fresh.length > 0 && <NotProved />}
      </Notice>
      <NotTaken refused={refused} />
      <Button kind="primary" wide onPress={onShow}>
        {words.showThem()}
      </Button>
      <ButtonRow>
        <ButtonLink to={`/casualty/${sheet}`}>{words.openSheet()}</ButtonLink>
        <Button onPress={onAgain}>{words.readMore()}</Button>
      </ButtonRow>
    </>
  );
}
