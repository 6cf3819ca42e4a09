import { CAUTIONS_FOR, type TroubleTry } from "#kit";
import { nextTry, type FaultAdvice } from "#station";
import { findCaution } from "#base";
import { Button, Notice } from "#web/parts/index.ts";
import { CautionLine, CautionWords } from "#web/parts/caution-box.tsx";
import type { FaultShared } from "./fault-shared.ts";
import { RaiseLink } from "./raise-link.tsx";
import { useNewLook } from "#web/parts/look/use-new-look.ts";
import { sayBasis, sayMinutes, sayShare, sayWhyNextPump, worthTelling } from "./fault-words.ts";

/** The next thing to try, large; its cautions before it; what came of it. */
export function FaultTry(shared: FaultShared) {
  const { trouble, finding, found, where, onChange, onBegin } = shared;
  const advice = nextTry(trouble, finding.tried, found, where);
  const undo = () => onChange({ ...finding, tried: finding.tried.slice(0, -1) });
  return (
    <section className="fault" aria-label={trouble.name}>
      <h2>{trouble.name}</h2>
      {advice.next.kind === "try" ? (
        <OneTry key={advice.next.try.id} shared={shared} one={advice.next.try} />
      ) : (
        <GiveUp shared={shared} advice={advice} />
      )}
      <WhatItMayBe advice={advice} />
      <div className="fault-foot">
        {finding.tried.length > 0 && (
          <Button kind="quiet" onPress={undo}>
            Take back the last answer
          </Button>
        )}
        <Button kind="quiet" onPress={onBegin}>
          It does something else
        </Button>
      </div>
    </section>
  );
}

function OneTry({ shared, one }: { readonly shared: FaultShared; readonly one: TroubleTry }) {
  const { finding, onChange } = shared;
  // A second tap meant for the question before must not answer this one.
  const isSettled = !useNewLook(one.id).isNew;
  return (
    <>
      <TryCautions one={one} />
      <p className="fault-do">{one.does}</p>
      <p className="fault-minutes">
        Try {finding.tried.length + 1}: {sayMinutes(one.minutes)}
      </p>
      <div className="fault-answers">
        <Button kind="primary" wide isDisabled={!isSettled} onPress={() => onChange({ ...finding, ended: one.id })}>
          That was it: it works
        </Button>
        <Button
          kind="primary"
          wide
          isDisabled={!isSettled}
          onPress={() => onChange({ ...finding, tried: [...finding.tried, one.id] })}
        >
          No change
        </Button>
      </div>
    </>
  );
}

/** Cautions of what it does, one line each, the rest a tap away. */
function TryCautions({ one }: { readonly one: TroubleTry }) {
  const ids = [...new Set(one.hazards.flatMap((hazard) => CAUTIONS_FOR[hazard]))];
  return ids.flatMap((id) => {
    const caution = findCaution(id);
    return caution ? (
      <CautionLine key={id} signal={caution.signal} hazard={caution.hazard}>
        <CautionWords caution={caution} />
      </CautionLine>
    ) : (
      []
    );
  });
}

/** Nothing here is worth the minutes: the next pump at sea, the workshop on the bench. */
function GiveUp({ shared, advice }: { readonly shared: FaultShared; readonly advice: FaultAdvice }) {
  const { next } = advice;
  const { finding, onChange } = shared;
  return (
    <>
      {next.kind === "next-pump" ? (
        <Notice tone="wrong" title="Stop. Take the next pump." isNews>
          <p>{sayWhyNextPump(advice, next.minutes)}</p>
        </Notice>
      ) : (
        <Notice tone="wrong" title="Nothing is left to try here" isNews>
          <p>Raise the finding. A workshop must look at it.</p>
        </Notice>
      )}
      {next.kind === "next-pump" && (
        <Button wide onPress={() => onChange({ ...finding, isAlone: true })}>
          There is no next pump: go on here
        </Button>
      )}
      <RaiseLink shared={shared} cause={advice.causes[0]?.cause} isEnded={false} />
    </>
  );
}

function WhatItMayBe({ advice }: { readonly advice: FaultAdvice }) {
  return (
    <details className="fault-causes">
      <summary>What it may be, and what that rests on</summary>
      <ul>
        {worthTelling(advice.causes).map(({ cause, chance }) => (
          <li key={cause.id}>
            {cause.says}: {sayShare(chance)}
          </li>
        ))}
      </ul>
      <p>{sayBasis(advice.findings)}</p>
    </details>
  );
}
