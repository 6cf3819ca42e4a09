import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { ErrorBox, MoreOnPhone, Section } from "#web/parts/index.ts";
import { ShortCautions } from "#web/parts/caution-box.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { AssumptionList } from "#web/rig/assumption-list.tsx";
import { isTooShort, type Setting } from "#web/rig/delivery-words.ts";
import { PrimeReadingNotice } from "#web/rig/prime-reading.tsx";
import { askPrime, readPrime, sayGreatest, sayPrime } from "#web/rig/prime-words.ts";
import { surroundingsOf } from "#web/rig/rig-setting.ts";

/** How the kit primes at this lift, and what a slow prime says. */
export function PrimePanel({ about }: { readonly about: Setting }) {
  const words = useWords("delivery");
  const prime = useWords("prime");
  const { pattern, setting, units } = about;
  const [typed, setTyped] = useState("");
  const [observed, setObserved] = useState<number>();
  if (isTooShort(about)) return null;
  const answer = askPrime(pattern, {
    lift: setting.lift,
    hoseLength: setting.suctionLength,
    ...(observed !== undefined && { observed }),
    surroundings: surroundingsOf(setting),
  });
  if (!answer) return null;
  if ("error" in answer) return <ErrorBox error={answer.error} title={words.primeNotComputed()} />;
  const reader = { units, words: prime };
  const reading = readPrime(answer, reader);
  return (
    <Section title={words.priming()}>
      <p className="delivery-line">{sayPrime(answer, setting.lift, reader)}</p>
      <ShortCautions ids={["never-run-dry"]} />
      <MoreOnPhone title={words.primeFolded()}>
        <p>{sayGreatest(answer, pattern.hydraulics.pump.greatestLift, setting.lift, reader)}</p>
        <QuantityField
          label={words.reallyTook()}
          hint={words.reallyTookHint()}
          dimension="time"
          unit="s"
          value={typed}
          onChange={(text, read) => (setTyped(text), setObserved(read?.si))}
        />
        {reading && <PrimeReadingNotice reading={reading} />}
        <details className="extras">
          <summary>{words.granted()}</summary>
          <AssumptionList assumptions={answer.assumptions} />
        </details>
      </MoreOnPhone>
    </Section>
  );
}
