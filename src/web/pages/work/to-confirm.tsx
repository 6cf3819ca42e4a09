import { addDays, dayWritten } from "#base";
import { useWords } from "#web/language/index.ts";
import { toConfirm, type KitState, type ToConfirm as Asked } from "#readiness";
import { confirmSecond, mayWrite } from "#station";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Notice, sayInstant, useDoing } from "#web/parts/index.ts";

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
  const words = useWords("work");
  const view = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const what = view.qualifications.find(({ id }) => id === said.qualification)?.name ?? said.qualification;
  const confirm = () => doing.run(() => carryOut((at) => confirmSecond(at, kit, { turnaround, named: said.entry })));
  return (
    <Notice tone="attention" title={words.didYouSee({ what, kit: kit.name })}>
      <p>{words.namedYou({ name: nameOf(view, said.by), at: sayInstant(said.at) })}</p>
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <div>
        <Button isBusy={doing.isBusy} label={words.sawItOf({ what, kit: kit.name })} onPress={() => void confirm()}>
          {words.sawIt()}
        </Button>
      </div>
    </Notice>
  );
}
