import { compareDrill, drillsOn, isHiding } from "#readiness";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, Notice, Page, Section, StandingMark, Timestamp } from "#web/parts/index.ts";
import { findKit, nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import { BeginForm } from "./begin-form.tsx";
import { ComparedPanel } from "./compared-panel.tsx";
import type { DrillAtHand } from "./drill-at-hand.ts";
import { EndPanel } from "./end-panel.tsx";
import { PlantForm } from "./plant-form.tsx";
import { PlantedPanel } from "./planted-panel.tsx";
import "#web/kit-view/kit.css";
import "./drills.css";

/** The drill on one kit, from setting it aside to its end. */
export default function DrillPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const { kit, view, pattern } = at;
  const standing = view.standings.get(kit.id);
  const [drill] = drillsOn(kit);
  return (
    <Page
      title={`Drill on ${kit.name}`}
      back={{ to: `/kit/${kit.id}`, label: kit.name }}
      {...(standing && { beside: <StandingMark standing={standing.standing} size="large" /> })}
    >
      <div className="drill-form">
        {drill ? (
          <DrillOn at={{ ...at, drill, comparison: compareDrill(kit, drill, pattern) }} />
        ) : (
          <NoDrillOn at={at} />
        )}
        <ButtonRow>
          <ButtonLink to="/drills">All drills of the station</ButtonLink>
        </ButtonRow>
      </div>
    </Page>
  );
}

/** A drill that has just ended leaves a turnaround to be sealed; else one can be begun. */
function NoDrillOn({ at }: { readonly at: KitAtHand }) {
  const { turnaround, id } = at.kit;
  if (turnaround?.drill === undefined) return <BeginForm at={at} />;
  return (
    <Section title="The drill has ended">
      <p>Look again at the lines that the sealing names, then seal the kit. It is not ready before.</p>
      <ButtonLink kind="primary" to={`/kit/${id}/turnaround?at=seal`}>
        Go on to the sealing
      </ButtonLink>
    </Section>
  );
}

function DrillOn({ at }: { readonly at: DrillAtHand }) {
  const { drill, kit, view } = at;
  const plants = Object.values(drill.plants);
  const isTrainee = drill.begun.trainees.includes(view.me.id);
  return (
    <>
      <Notice tone="attention" title={`${kit.name} is set aside: it must not go`}>
        <p>
          Since <Timestamp at={drill.begun.at} />, for{" "}
          {drill.begun.trainees.map((person) => nameOf(at.view, person)).join(", ")}.{" "}
          {plants.length === 0 ? "Nothing is written down as planted yet." : "Faults are planted."}
        </p>
      </Notice>
      {plants.length === 0 && !kit.turnaround && !isTrainee && <PlantForm at={at} drill={drill} />}
      {isHiding(drill) && plants.length > 0 && <Looking at={at} isTrainee={isTrainee} />}
      {plants
        .filter(({ commitment }) => !drill.revealed[commitment])
        .map((plant) => (
          <PlantedPanel key={plant.commitment} at={at} plant={plant} />
        ))}
      {Object.keys(drill.revealed).length > 0 && !isHiding(drill) && <ComparedPanel at={at} />}
      <EndPanel at={at} />
    </>
  );
}

/** The way into the turnaround, for who is drilled. */
function Looking({ at: { kit }, isTrainee }: { readonly at: DrillAtHand; readonly isTrainee: boolean }) {
  if (!isTrainee) return null;
  return (
    <Section title="Find what was planted">
      <p>
        Turn the kit round as always, and raise a finding for whatever is wrong. How many faults there are nobody says.
      </p>
      <ButtonLink kind="primary" to={`/kit/${kit.id}/turnaround`}>
        {kit.turnaround ? "Go on with the turnaround" : "Open it for the turnaround"}
      </ButtonLink>
    </Section>
  );
}
