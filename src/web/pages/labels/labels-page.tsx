import { useState } from "react";
import { useParams } from "wouter";
import type { Place } from "#readiness";
import { LABEL_SHEETS, mayWrite, type LabelSheetId } from "#station";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { EmptyState, Page, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { ShelvesForm } from "./shelves-form.tsx";
import "./labels.css";

/** Labels of a place's kits and shelves, and the order in which its kits stand. */
export default function LabelsPage() {
  const { place: wanted = "" } = useParams<{ readonly place: string }>();
  const view = useStation();
  const words = useWords("labels");
  const frame = useWords("frame");
  const place = view.places.find(({ id }) => id === wanted);
  if (!place) {
    return (
      <Page title={words.noPlace()} back={{ to: "/", label: frame.board() }}>
        <EmptyState title={words.noPlaceNews()} />
      </Page>
    );
  }
  return (
    <Page title={words.title({ place: place.name })} back={{ to: "/stock", label: frame.stock() }}>
      <Labels place={place} />
      {mayWrite(view.me.role, "shelves-set") && <ShelvesForm key={JSON.stringify(place.shelves)} place={place} />}
    </Page>
  );
}

/** Which sheet lies in the printer, and how much of it is used up. */
function Labels({ place }: { readonly place: Place }) {
  const words = useWords("labels");
  const [sheet, setSheet] = useState<LabelSheetId>("a4-21");
  const [skip, setSkip] = useState<number | undefined>(0);
  const address = (of: "kits" | "shelves") =>
    `/api/paper/labels.pdf?place=${encodeURIComponent(place.id)}&of=${of}&sheet=${sheet}&skip=${skip ?? 0}`;
  return (
    <Section title={words.labels()}>
      <div className="labels-form">
        <p>{words.labelsMore()}</p>
        <Choice
          label={words.sheet()}
          options={LABEL_SHEETS.map(({ id, name }) => ({ value: id, label: name }))}
          value={sheet}
          onChange={setSheet}
        />
        <NumberField label={words.used()} value={skip} onChange={setSkip} least={0} most={29} />
        <PaperLink href={address("kits")} name={`labels-kits-${place.id}`}>
          {words.kitsPdf()}
        </PaperLink>
        {(place.shelves ?? []).length > 0 && (
          <PaperLink href={address("shelves")} name={`labels-shelves-${place.id}`}>
            {words.shelvesPdf()}
          </PaperLink>
        )}
      </div>
    </Section>
  );
}
