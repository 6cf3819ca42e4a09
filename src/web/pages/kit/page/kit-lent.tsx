import { sayLentOut, type KitState } from "#readiness";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { mayWrite, settleLent } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { useState } from "react";
import { Button, ButtonRow, ErrorBox, Notice, sayDay, useDoing } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { useRefused } from "#web/parts/fields/use-refused.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

type Out = NonNullable<KitState["lentOut"]>[number];

/** What was lent with the kit and is still out, each with the two buttons that end it. */
export function KitLent({ at }: { readonly at: KitAtHand }) {
  const { lentOut = [] } = at.kit;
  return lentOut.map((out) => <OneOut key={`${out.entry} ${out.name}`} at={at} out={out} />);
}

function OneOut({ at, out }: { readonly at: KitAtHand; readonly out: Out }) {
  const words = useWords("kitPage");
  return (
    <Notice tone="attention" title={sayLentOut(out, useWords("standing"))}>
      <p>{out.isCounted ? words.lentBack({ day: sayDay(out.at) }) : words.lentUncounted({ day: sayDay(out.at) })}</p>
      {/* Settled in part, what was typed of it is no longer what is meant. */}
      {mayWrite(at.view.me.role, "lent-settled") && <Settling key={out.count} at={at} out={out} />}
    </Notice>
  );
}

/** All of it at once, or the part of it that is typed. */
function Settling({ at, out }: { readonly at: KitAtHand; readonly out: Out }) {
  const words = useWords("kitPage");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const refused = useRefused();
  const [part, setPart] = useState<number>();
  const settle = (how: "came-back" | "given-up") => {
    const body = { returned: out.entry, name: out.name, how, ...(part !== undefined && { count: part }) };
    void doing.run(() => carryOut((now) => settleLent(now, at.kit, body)));
  };
  const some = part !== undefined && part < out.count ? part : undefined;
  const [here, givenUp] = [sayHere(out, some, words), sayGivenUp(out, some, words)];
  return (
    <>
      {out.count > 1 && (
        <NumberField
          label={words.howManyIfNotAll({ name: out.name, count: out.count })}
          least={1}
          most={out.count}
          value={part}
          onChange={(count, isRefused) => {
            setPart(count);
            refused.tell(out.name, isRefused);
          }}
        />
      )}
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <ButtonRow>
        <Button
          isDisabled={refused.isAny}
          isBusy={doing.isBusy}
          label={words.ofThing({ what: here, name: out.name })}
          onPress={() => settle("came-back")}
        >
          {here}
        </Button>
        <Button
          isDisabled={refused.isAny}
          isBusy={doing.isBusy}
          label={words.ofThing({ what: givenUp, name: out.name })}
          onPress={() => settle("given-up")}
        >
          {givenUp}
        </Button>
      </ButtonRow>
    </>
  );
}

function sayHere({ count }: Out, part: number | undefined, words: Words["kitPage"]): string {
  return part === undefined ? words.allHere({ count }) : words.someHere({ part, count });
}

function sayGivenUp({ count }: Out, part: number | undefined, words: Words["kitPage"]): string {
  return part === undefined ? words.giveUp({ count }) : words.giveSomeUp({ part, count });
}
