import { useState } from "react";
import { useParams } from "wouter";
import type { Place } from "#readiness";
import { LABEL_SHEETS, mayWrite, type LabelSheetId } from "#station";
import { useStation } from "../../device/index.ts";
import { EmptyState, Page, Section } from "../../parts/index.ts";
import { Choice } from "../../parts/fields/choice.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { PaperLink } from "../../parts/paper-link.tsx";
import { ShelvesForm } from "./shelves-form.tsx";
import "./labels.css";

/** Labels of a place's kits and shelves, and the order in which its kits stand. */
export default function LabelsPage() {
  const { place: wanted = "" } = useParams<{ readonly place: string }>();
  const view = useStation();
  const place = view.places.find(({ id }) => id === wanted);
  if (!place) {
    return (
      <Page title="No such place" back={{ to: "/", label: "Board" }}>
        <EmptyState title="This device knows no such place" />
      </Page>
    );
  }
  return (
    <Page title={`Labels and shelves, ${place.name}`} back={{ to: "/stock", label: "Parts" }}>
      <Labels place={place} />
      {mayWrite(view.me.role, "shelves-set") && <ShelvesForm key={JSON.stringify(place.shelves)} place={place} />}
    </Page>
  );
}

/** Which sheet lies in the printer, and how much of it is used up. */
function Labels({ place }: { readonly place: Place }) {
  const [sheet, setSheet] = useState<LabelSheetId>("a4-21");
  const [skip, setSkip] = useState<number | undefined>(0);
  const address = (of: "kits" | "shelves") =>
    `/api/paper/labels.pdf?place=${encodeURIComponent(place.id)}&of=${of}&sheet=${sheet}&skip=${skip ?? 0}`;
  return (
    <Section title="Labels">
      <div className="labels-form">
        <p>
          Each has the name, the serial and a code that the camera reads. Print at 100&nbsp;%, not fitted to the page.
          The code names the kit or the shelf, and nothing else.
        </p>
        <Choice
          label="The sheet in the printer"
          options={LABEL_SHEETS.map(({ id, name }) => ({ value: id, label: name }))}
          value={sheet}
          onChange={setSheet}
        />
        <NumberField label="Labels used up on the first sheet" value={skip} onChange={setSkip} least={0} most={29} />
        <PaperLink href={address("kits")} name={`labels-kits-${place.id}`}>
          Labels of the kits as PDF
        </PaperLink>
        {(place.shelves ?? []).length > 0 && (
          <PaperLink href={address("shelves")} name={`labels-shelves-${place.id}`}>
            Labels of the shelves as PDF
          </PaperLink>
        )}
      </div>
    </Section>
  );
}
