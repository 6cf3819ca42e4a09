import { endedBy } from "#station";
import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { FaultShared } from "./fault-shared.ts";
import { sayShare } from "./fault-words.ts";
import { RaiseLink } from "./raise-link.tsx";

/** It works: what it was, and the finding that makes the next kit better. */
export function FaultEnd(shared: FaultShared) {
  const { trouble, finding, found, onChange, onBegin } = shared;
  const words = useWords("fault");
  const likely = endedBy(trouble, finding.tried, finding.ended, found);
  const [picked, setPicked] = useState(likely[0]?.cause.id);
  const cause = likely.find((one) => one.cause.id === picked)?.cause;
  return (
    <section className="fault" aria-label={words.whatItWas()}>
      <Notice tone="plain" title={words.worksNow()} isNews>
        <p>{words.worksNowMore()}</p>
      </Notice>
      {likely.length > 1 && (
        <Choice
          label={words.whatWasIt()}
          options={likely.map((one) => ({
            value: one.cause.id,
            label: one.cause.says,
            note: sayShare(one.chance, words),
          }))}
          value={picked}
          onChange={setPicked}
        />
      )}
      {likely.length === 1 && <p className="fault-do">{likely[0]!.cause.says}</p>}
      {cause?.mode === undefined ? <p>{words.noFinding()}</p> : null}
      <RaiseLink shared={shared} cause={cause} isEnded />
      <div className="fault-foot">
        <Button kind="quiet" onPress={() => onChange({ ...finding, ended: "" })}>
          {words.doesNotWork()}
        </Button>
        <Button kind="quiet" onPress={onBegin}>
          {words.beginAnew()}
        </Button>
      </div>
    </section>
  );
}
