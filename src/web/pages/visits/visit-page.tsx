import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { EmptyState, Page } from "#web/parts/index.ts";
import { ComparePanel } from "./compare-panel.tsx";
import { LooksPanel } from "./looks-panel.tsx";
import { sayPlaces } from "./visit-at-hand.ts";
import "#web/kit-view/extras.css";
import "./visits.css";
import { useReady, useWords } from "#web/language/index.ts";

/** One visit: line after line while it is on, what it showed once it is over. */
export default function VisitPage() {
  useReady("visits", "visit", "act", "kitLine");
  const visits = useWords("visits");
  const words = useWords("visit");
  const { id = "" } = useParams<{ readonly id: string }>();
  const view = useStation();
  const visit = view.visits.find((one) => one.id === id);
  const back = { to: "/visits", label: visits.title() };
  if (!visit) {
    return (
      <Page title={words.title()} back={back}>
        <EmptyState title={words.unknown()}>{words.unknownMore()}</EmptyState>
      </Page>
    );
  }
  return (
    <Page title={words.titleTo({ places: sayPlaces(view, visit) })} back={back} frame={visit.ended ? "usual" : "work"}>
      {visit.ended ? <ComparePanel visit={visit} /> : <LooksPanel visit={visit} />}
    </Page>
  );
}
