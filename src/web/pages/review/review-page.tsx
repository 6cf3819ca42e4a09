import type { CasualtyState } from "#readiness";
import { pumpReviews } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { EmptyState, Page, Section } from "#web/parts/index.ts";
import { ButtonLink, ButtonRow } from "#web/parts/button.tsx";
import { ForecastsOf } from "./forecasts-of.tsx";
import { KeepPart } from "./keep-part.tsx";
import { PumpsPart } from "./pumps-part.tsx";
import { ToldPart } from "./told-part.tsx";
import { useJudged } from "./use-judged.ts";
import "#web/kit-view/kit.css";

/** A closed casualty gone through: what was forecast and what came, each pump, what people add, and what is done about it. */
export default function ReviewPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const view = useStation();
  const casualty = view.casualties.find((one) => one.id === id);
  const back = { to: `/casualty/${id}`, label: casualty?.name ?? "Casualty" };
  if (!casualty?.closed) {
    return (
      <Page title="Nothing to go through yet" back={back}>
        <EmptyState title={casualty ? "Her sheet is not closed" : "This device knows no casualty at this address"}>
          <p>A casualty is gone through when its sheet is closed.</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={`${casualty.name}: afterwards`} back={back}>
      <Review key={id} view={view} casualty={casualty} />
    </Page>
  );
}

function Review({ view, casualty }: { readonly view: StationView; readonly casualty: CasualtyState }) {
  const entries = useMemo(() => view.entriesOf(`casualty:${casualty.id}`), [view, casualty.id]);
  const pumps = useMemo(() => pumpReviews(casualty, entries), [casualty, entries]);
  const judged = useJudged(view, casualty);
  return (
    <>
      <StillAway view={view} casualty={casualty} />
      <PumpsPart pumps={pumps} view={view} casualty={casualty} />
      <ForecastsOf judged={judged} />
      <ToldPart casualty={casualty} view={view} />
      <KeepPart casualty={casualty} judged={judged} view={view} />
      <Section title="More">
        <ButtonRow>
          <ButtonLink to={`/casualty/${casualty.id}/timeline`}>Timeline, with what the page said</ButtonLink>
          <ButtonLink to="/forecasts">How good our forecasts were</ButtonLink>
        </ButtonRow>
      </Section>
    </>
  );
}

/** Kits that are not back: what they met is not known yet. */
function StillAway({ view, casualty }: { readonly view: StationView; readonly casualty: CasualtyState }) {
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const away = view.kits.filter(({ id, custody }) => kits.has(id) && custody.kind === "away");
  if (away.length === 0) return null;
  return (
    <p>
      <strong>Not back yet:</strong> {away.map(({ name }) => name).join(", ")}. What they met, and what is found on
      them, comes with their return.
    </p>
  );
}
