import { useWords, withParts } from "#web/language/index.ts";
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
  const words = useWords("review");
  const frame = useWords("frame");
  const { id = "" } = useParams<{ readonly id: string }>();
  const view = useStation();
  const casualty = view.casualties.find((one) => one.id === id);
  const back = { to: `/casualty/${id}`, label: casualty?.name ?? frame.casualty() };
  if (!casualty?.closed) {
    return (
      <Page title={words.notYet()} back={back}>
        <EmptyState title={casualty ? words.notClosed() : words.noCasualty()}>
          <p>{words.whenClosed()}</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={words.title({ casualty: casualty.name })} back={back}>
      <Review key={id} view={view} casualty={casualty} />
    </Page>
  );
}

function Review({ view, casualty }: { readonly view: StationView; readonly casualty: CasualtyState }) {
  const words = useWords("review");
  const entries = useMemo(() => view.entriesOf(`casualty:${casualty.id}`), [view, casualty.id]);
  const pumps = useMemo(() => pumpReviews(casualty, entries), [casualty, entries]);
  const judged = useJudged(view, casualty);
  return (
    <>
      <StillAway view={view} casualty={casualty} />
      <PumpsPart pumps={pumps} view={view} casualty={casualty} />
      <ForecastsOf judged={judged} nameOf={(kit) => nameOf(view, kit)} />
      <ToldPart casualty={casualty} view={view} />
      <KeepPart casualty={casualty} judged={judged} view={view} />
      <Section title={words.more()}>
        <ButtonRow>
          <ButtonLink to={`/casualty/${casualty.id}/timeline`}>{words.timeline()}</ButtonLink>
          <ButtonLink to="/forecasts">{words.forecastsTitle()}</ButtonLink>
        </ButtonRow>
      </Section>
    </>
  );
}

function nameOf({ kits, retired }: StationView, id: string): string {
  return [...kits, ...retired].find((kit) => kit.id === id)?.name ?? id;
}

/** Kits that are not back: what they met is not known yet. */
function StillAway({ view, casualty }: { readonly view: StationView; readonly casualty: CasualtyState }) {
  const words = useWords("review");
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const away = view.kits.filter(({ id, custody }) => kits.has(id) && custody.kind === "away");
  if (away.length === 0) return null;
  return (
    <p>
      {withParts(words.notBackMore, {
        label: <strong>{words.notBack()}</strong>,
        kits: away.map(({ name }) => name).join(", "),
      })}
    </p>
  );
}
