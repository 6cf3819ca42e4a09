import type { CasualtyState } from "#readiness";
import { keepReview, mayWrite } from "#station";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, sayCount, Section, Timestamp } from "#web/parts/index.ts";
import type { Judged } from "./use-judged.ts";

interface KeepPartProps {
  readonly casualty: CasualtyState;
  readonly judged: Judged;
  readonly view: StationView;
}

/** The keeper says that it was gone through; its forecasts are then among those that are scored. */
export function KeepPart({ casualty, judged, view }: KeepPartProps) {
  const carryOut = useCarryOut();
  const saving = useSaving();
  const { reviewed } = casualty;
  const keep = () => carryOut((doing) => keepReview(doing, casualty, { forecasts: judged.forecasts.slice(0, 500) }));
  return (
    <Section title="Gone through">
      {reviewed && (
        <p>
          By {nameOf(view, reviewed.by)} on <Timestamp at={reviewed.at} as="day" />,{" "}
          {sayCount(reviewed.forecasts.length, "forecast")} kept.
        </p>
      )}
      {mayWrite(view.me.role, "casualty-reviewed") ? (
        <>
          <ErrorBox error={saving.error} title="Not kept" />
          <Button wide isDisabled={judged.left > 0} onPress={() => void saving.save(keep)}>
            {judged.left > 0 ? "Forecasts are still being computed" : "Gone through: keep its forecasts"}
          </Button>
        </>
      ) : (
        !reviewed && <p className="quiet">A keeper says when it has been gone through.</p>
      )}
    </Section>
  );
}
