import { addDays, dayWritten } from "#base";
import { toConfirm, type KitState, type ToConfirm as Asked } from "#readiness";
import { confirmSecond, mayWrite } from "#station";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Notice, Timestamp, useDoing } from "#web/parts/index.ts";

/** Asked for so many days; what nobody confirmed by then stands as not confirmed [d]: judgement. */
const ASKED_FOR = 14;

/** What this person was named for as the second person: did they see it? Their own word, on their own device. */
export function ToConfirm() {
  const view = useStation();
  const since = addDays(view.today, -ASKED_FOR);
  if (!mayWrite(view.me.role, "second-confirmed")) return null;
  return view.kits.flatMap((kit) =>
    toConfirm(kit, view.me.id)
      .filter(({ said }) => dayWritten(said.at) >= since)
      .map((asked) => <OneAsked key={asked.said.entry} kit={kit} asked={asked} />),
  );
}

function OneAsked({ kit, asked: { turnaround, said } }: { readonly kit: KitState; readonly asked: Asked }) {
  const view = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const qualification = view.qualifications.find(({ id }) => id === said.qualification)?.name ?? said.qualification;
  const confirm = () => doing.run(() => carryOut((at) => confirmSecond(at, kit, { turnaround, named: said.entry })));
  return (
    <Notice tone="attention" title={`Did you see it done? ${qualification}, ${kit.name}`}>
      <p>
        {nameOf(view, said.by)} named you as the second person, <Timestamp at={said.at} />. If you did not see it, say
        so to the keeper and leave this.
      </p>
      <ErrorBox error={doing.error} title="Not written down" />
      <div>
        <Button
          isBusy={doing.isBusy}
          label={`I saw it done: ${qualification}, ${kit.name}`}
          onPress={() => void confirm()}
        >
          I saw it done
        </Button>
      </div>
    </Notice>
  );
}
