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
import { useWords, withParts } from "#web/language/index.ts";

/** The drill on one kit, from setting it aside to its end. */
export default function DrillPage() {
  const words = useWords("drill");
  // Here before faults are compared, so that the page does not wait then.
  useWords("drills");
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const { kit, view, pattern } = at;
  const standing = view.standings.get(kit.id);
  const [drill] = drillsOn(kit);
  return (
    <Page
      title={words.title({ kit: kit.name })}
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
          <ButtonLink to="/drills">{words.all()}</ButtonLink>
        </ButtonRow>
      </div>
    </Page>
  );
}

/** A drill that has just ended leaves a turnaround to be sealed; else one can be begun. */
function NoDrillOn({ at }: { readonly at: KitAtHand }) {
  const words = useWords("drill");
  const { turnaround, id } = at.kit;
  if (turnaround?.drill === undefined) return <BeginForm at={at} />;
  return (
    <Section title={words.hasEnded()}>
      <p>{words.hasEndedMore()}</p>
      <ButtonLink kind="primary" to={`/kit/${id}/turnaround?at=seal`}>
        {words.toSealing()}
      </ButtonLink>
    </Section>
  );
}

function DrillOn({ at }: { readonly at: DrillAtHand }) {
  const words = useWords("drill");
  const { drill, kit, view } = at;
  const plants = Object.values(drill.plants);
  const isTrainee = drill.begun.trainees.includes(view.me.id);
  const who = drill.begun.trainees.map((person) => nameOf(view, person)).join(", ");
  return (
    <>
      <Notice tone="attention" title={words.aside({ kit: kit.name })}>
        <p>
          {withParts(({ at: mark }) => words.sinceFor({ at: mark, who }), { at: <Timestamp at={drill.begun.at} /> })}{" "}
          {plants.length === 0 ? words.nothingPlanted() : words.planted()}
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
  const words = useWords("drill");
  if (!isTrainee) return null;
  return (
    <Section title={words.find()}>
      <p>{words.findMore()}</p>
      <ButtonLink kind="primary" to={`/kit/${kit.id}/turnaround`}>
        {kit.turnaround ? words.goOn() : words.openIt()}
      </ButtonLink>
    </Section>
  );
}
