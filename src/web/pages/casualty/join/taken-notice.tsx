import { useStation, type TakenSheet } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, Notice, sayCount, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { NotProved } from "./not-proved.tsx";

interface TakenNoticeProps {
  readonly taken: TakenSheet;
  readonly onShow: () => void;
  readonly onAgain: () => void;
}

/** What came of a sheet that was read, and the way back: the other device has not had ours yet. */
export function TakenNotice({ taken, onShow, onAgain }: TakenNoticeProps) {
  const view = useStation();
  const { fresh, known, refused, by, device, made, sheet } = taken;
  const from = view.devices.find(({ id }) => id === device)?.name ?? "a device not known here";
  return (
    <>
      <Notice title={fresh.length === 0 ? "Nothing new in it" : `${sayCount(fresh.length, "line")} taken`} isNews>
        <p>
          From {nameOf(view, by)} on {from}, as it stood at <Timestamp at={made} as="time" />. {known} of its lines were
          here already.
        </p>
        {fresh.length > 0 && <NotProved />}
      </Notice>
      <Refused refused={refused} />
      <Button kind="primary" wide onPress={onShow}>
        Now show them ours
      </Button>
      <ButtonRow>
        <ButtonLink to={`/casualty/${sheet}`}>Open the sheet</ButtonLink>
        <Button onPress={onAgain}>Read once more</Button>
      </ButtonRow>
    </>
  );
}

function Refused({ refused }: Pick<TakenSheet, "refused">) {
  if (refused.length === 0) return null;
  const reasons = new Set(refused.flatMap(({ faults }) => faults.map(({ code, remedy }) => `${code}: ${remedy}`)));
  return (
    <Notice tone="wrong" title={`${sayCount(refused.length, "line")} not taken`}>
      <ul className="casualty-list">
        {[...reasons].slice(0, 6).map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </Notice>
  );
}
