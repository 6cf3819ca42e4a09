import type { CasualtyState } from "#readiness";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, EmptyState, Page, Section, Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { OUTCOMES } from "./outcomes.ts";
import { sayBoat } from "./sheet/say.ts";
import "./casualty.css";

/** Casualties: how many kits before launching, the sheets that are open, and those closed. */
export default function CasualtyPage() {
  const { casualties } = useStation();
  const open = casualties.filter(({ closed }) => !closed);
  const closed = casualties.filter(({ closed: done }) => done);
  return (
    <Page title="Casualty">
      <div className="casualty">
        <ButtonLink kind="primary" wide to="/casualty/new">
          Boat taking water: how many kits?
        </ButtonLink>
        <ButtonLink wide to="/card/read-do">
          Card for a stranger: eight lines
        </ButtonLink>
        <ButtonLink wide to="/casualty/read">
          Read a sheet from another device
        </ButtonLink>
        <Section title="Open">
          {open.length === 0 ? <EmptyState title="No casualty is open" /> : <Sheets of={open} />}
        </Section>
        {closed.length > 0 && (
          <Section title="Closed">
            <Sheets of={closed} />
            <ButtonLink to="/forecasts">How good our forecasts were</ButtonLink>
          </Section>
        )}
      </div>
    </Page>
  );
}

function Sheets({ of }: { readonly of: readonly CasualtyState[] }) {
  const { units } = usePreferences();
  return (
    <ul className="casualty-sheets">
      {of.map((casualty) => (
        <li key={casualty.id}>
          <Link to={`/casualty/${casualty.id}`} className="casualty-sheet-link">
            <strong>{casualty.name}</strong>
            <span>
              {sayBoat(casualty.boat, units)}; <Timestamp at={casualty.opened.at} />
              {casualty.closed && `; ${OUTCOMES[casualty.closed.outcome]}`}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
