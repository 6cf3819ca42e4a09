import { sayLentOut, type KitState } from "#readiness";
import { mayWrite, settleLent } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { useState } from "react";
import { Button, ButtonRow, ErrorBox, Notice, Timestamp, useDoing } from "#web/parts/index.ts";
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
  return (
    <Notice tone="attention" title={sayLentOut(out)}>
      <p>
        The kit came back on <Timestamp at={out.at} as="day" />
        {out.isCounted ? " without it." : ", and nobody counted this."}
      </p>
      {/* Settled in part, what was typed of it is no longer what is meant. */}
      {mayWrite(at.view.me.role, "lent-settled") && <Settling key={out.count} at={at} out={out} />}
    </Notice>
  );
}

/** All of it at once, or the part of it that is typed. */
function Settling({ at, out }: { readonly at: KitAtHand; readonly out: Out }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const refused = useRefused();
  const [part, setPart] = useState<number>();
  const settle = (how: "came-back" | "given-up") => {
    const body = { returned: out.entry, name: out.name, how, ...(part !== undefined && { count: part }) };
    void doing.run(() => carryOut((now) => settleLent(now, at.kit, body)));
  };
  const many = part !== undefined && part < out.count ? `${part} of ${out.count}` : undefined;
  return (
    <>
      {out.count > 1 && (
        <NumberField
          label={`${out.name}: how many of ${out.count}, if not all?`}
          least={1}
          most={out.count}
          value={part}
          onChange={(count, isRefused) => {
            setPart(count);
            refused.tell(out.name, isRefused);
          }}
        />
      )}
      <ErrorBox error={doing.error} title="Not written down" />
      <ButtonRow>
        <Button
          isDisabled={refused.isAny}
          isBusy={doing.isBusy}
          label={`${sayHere(out, many)}: ${out.name}`}
          onPress={() => settle("came-back")}
        >
          {sayHere(out, many)}
        </Button>
        <Button
          isDisabled={refused.isAny}
          isBusy={doing.isBusy}
          label={`${sayGivenUp(out, many)}: ${out.name}`}
          onPress={() => settle("given-up")}
        >
          {sayGivenUp(out, many)}
        </Button>
      </ButtonRow>
    </>
  );
}

function sayHere({ count }: Out, many: string | undefined): string {
  if (many !== undefined) return `${many} ${many.startsWith("1 ") ? "is" : "are"} here`;
  return count === 1 ? "It is here" : `All ${count} are here`;
}

function sayGivenUp({ count }: Out, many: string | undefined): string {
  if (many !== undefined) return `Give ${many} up`;
  return count === 1 ? "Give it up" : `Give all ${count} up`;
}
