import { useWords, withParts } from "#web/language/index.ts";
import type { CasualtyState } from "#readiness";
import { isKeptAlready, keepReview, mayWrite, toKeep } from "#station";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Section, Timestamp } from "#web/parts/index.ts";
import type { Judged } from "./use-judged.ts";

interface KeepPartProps {
  readonly casualty: CasualtyState;
  readonly judged: Judged;
  readonly view: StationView;
}

/** The keeper says that it was gone through; its forecasts are then among those that are scored. */
export function KeepPart({ casualty, judged, view }: KeepPartProps) {
  const words = useWords("review");
  const carryOut = useCarryOut();
  const saving = useSaving();
  const { reviewed } = casualty;
  const keep = () => carryOut((doing) => keepReview(doing, casualty, { forecasts: toKeep(judged.forecasts) }));
  const isDone = judged.left === 0 && isKeptAlready(casualty, judged.forecasts);
  return (
    <Section title={words.goneThrough()}>
      {reviewed && (
        <p>
          {withParts((marks) => words.keptBy({ count: reviewed.forecasts.length, ...marks }), {
            person: nameOf(view, reviewed.by),
            at: <Timestamp at={reviewed.at} as="day" />,
          })}
        </p>
      )}
      {isDone ? null : mayWrite(view.me.role, "casualty-reviewed") ? (
        <>
          <ErrorBox error={saving.error} title={words.notKept()} />
          <Button wide isDisabled={judged.left > 0} onPress={() => void saving.save(keep)}>
            {judged.left > 0 ? words.computing() : reviewed ? words.keepAnew() : words.keep()}
          </Button>
        </>
      ) : (
        !reviewed && <p className="quiet">{words.keeperSays()}</p>
      )}
    </Section>
  );
}
