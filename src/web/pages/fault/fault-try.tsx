import type { Trouble, TroubleTry } from "#kit";
import { nextTry, type FaultAdvice } from "#station";
import { useWords } from "#web/language/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import { CautionRows } from "#web/parts/caution-rows.tsx";
import type { FaultShared } from "./fault-shared.ts";
import { RaiseLink } from "./raise-link.tsx";
import { useNewLook } from "#web/parts/look/use-new-look.ts";
import { lookRows, tryRows, type TryPlace } from "./try-cautions.ts";
import { sayMinutes, sayNobodyBeside, sayRanLately, sayShare, sayWhyNextPump, worthTelling } from "./fault-words.ts";

/** The next thing to try, large; its cautions before it; what came of it. */
export function FaultTry(shared: FaultShared) {
  const { trouble, finding, found, where, onChange, onBegin } = shared;
  const words = useWords("fault");
  const advice = nextTry(trouble, finding.tried, found, where);
  const undo = () => onChange({ ...finding, tried: finding.tried.slice(0, -1) });
  return (
    <section className="fault" aria-label={trouble.name}>
      <h2>{trouble.name}</h2>
      <NobodyBeside {...shared} />
      {shared.ranAgo !== undefined && <p>{sayRanLately(shared.ranAgo, words)}</p>}
      {finding.tried.length === 0 && trouble.look && <HowToSee shared={shared} look={trouble.look} />}
      {advice.next.kind === "try" ? (
        <OneTry key={advice.next.try.id} shared={shared} one={advice.next.try} />
      ) : (
        <GiveUp shared={shared} advice={advice} />
      )}
      <WhatItMayBe advice={advice} />
      <div className="fault-foot">
        {finding.tried.length > 0 && (
          <Button kind="quiet" onPress={undo}>
            {words.takeBack()}
          </Button>
        )}
        <Button kind="quiet" onPress={onBegin}>
          {words.somethingElse()}
        </Button>
      </div>
    </section>
  );
}

function OneTry({ shared, one }: { readonly shared: FaultShared; readonly one: TroubleTry }) {
  const { finding, onChange } = shared;
  const words = useWords("fault");
  // A second tap meant for the question before must not answer this one.
  const isSettled = !useNewLook(one.id).isNew;
  return (
    <>
      <CautionRows rows={tryRows(placeOf(shared), one)} />
      <p className="fault-do">{one.does}</p>
      <p className="fault-minutes">
        {words.tryNumber({ number: finding.tried.length + 1, minutes: sayMinutes(one.minutes, words) })}
      </p>
      <div className="fault-answers">
        <Button kind="primary" wide isDisabled={!isSettled} onPress={() => onChange({ ...finding, ended: one.id })}>
          {words.itWorks()}
        </Button>
        <Button
          kind="primary"
          wide
          isDisabled={!isSettled}
          onPress={() => onChange({ ...finding, tried: [...finding.tried, one.id] })}
        >
          {words.noChange()}
        </Button>
      </div>
    </>
  );
}

function placeOf({ at, trouble, finding, from }: FaultShared): TryPlace {
  return { pattern: at.pattern, trouble, tried: finding.tried, from };
}

interface HowToSeeProps {
  readonly shared: FaultShared;
  readonly look: NonNullable<Trouble["look"]>;
}

/** How to see the sign without harm, a tap away: it is told before anything is tried. */
function HowToSee({ shared, look }: HowToSeeProps) {
  const words = useWords("fault");
  return (
    <details className="fault-causes">
      <summary>{words.howToSee()}</summary>
      <CautionRows rows={lookRows(placeOf(shared), look)} />
      <p className="fault-do">{look.does}</p>
    </details>
  );
}

/** On a casualty where no other pump stands by: the next kit has to come, and when is said only where it was told. */
function NobodyBeside({ nextPumps, atSea, finding: { refused } }: FaultShared) {
  const words = useWords("fault");
  const said = atSea && sayNobodyBeside({ nextPumps, refused, otherKits: atSea.otherKits }, words);
  if (said === undefined) return null;
  if (refused.length === 0) return <p>{said}</p>;
  return (
    <Notice tone="wrong" title={words.callNextKit()} isNews>
      <p>{said}</p>
    </Notice>
  );
}

/** Nothing here is worth the minutes: the next pump at sea, the workshop on the bench. */
function GiveUp({ shared, advice }: { readonly shared: FaultShared; readonly advice: FaultAdvice }) {
  const { next } = advice;
  const words = useWords("fault");
  const { finding, onChange } = shared;
  const [pump = ""] = shared.nextPumps;
  return (
    <>
      {next.kind === "next-pump" ? (
        <Notice tone="wrong" title={words.nextPump({ pump })} isNews>
          <p>{sayWhyNextPump(advice, { minutes: next.minutes, pump }, words)}</p>
        </Notice>
      ) : (
        <Notice tone="wrong" title={words.nothingLeft()} isNews>
          <p>{shared.atSea === undefined ? words.nothingLeftMore() : words.nothingLeftAtSea()}</p>
        </Notice>
      )}
      {next.kind === "next-pump" && (
        <Button wide onPress={() => onChange({ ...finding, refused: [...finding.refused, pump] })}>
          {words.noNextPump({ pump })}
        </Button>
      )}
      <RaiseLink shared={shared} cause={advice.causes[0]?.cause} isEnded={false} />
    </>
  );
}

function WhatItMayBe({ advice }: { readonly advice: FaultAdvice }) {
  const words = useWords("fault");
  return (
    <details className="fault-causes">
      <summary>{words.whatItMayBe()}</summary>
      <ul>
        {worthTelling(advice.causes).map(({ cause, chance }) => (
          <li key={cause.id}>{words.causeAndChance({ cause: cause.says, chance: sayShare(chance, words) })}</li>
        ))}
      </ul>
      <p>{words.basis({ count: advice.findings })}</p>
    </details>
  );
}
