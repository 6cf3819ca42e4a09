import { useWords, withParts } from "#web/language/index.ts";
import type { CasualtyState } from "#readiness";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, EmptyState, Page, Section, Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { sayOutcome } from "./outcomes.ts";
import { sayBoat } from "./sheet/say.ts";
import "./casualty.css";

/** Casualties: how many kits before launching, the sheets that are open, and those closed. */
export default function CasualtyPage() {
  const words = useWords("casualty");
  const frame = useWords("frame");
  const { casualties } = useStation();
  const open = casualties.filter(({ closed }) => !closed);
  const closed = casualties.filter(({ closed: done }) => done);
  return (
    <Page title={frame.casualty()}>
      <div className="casualty">
        <ButtonLink kind="primary" wide to="/casualty/new">
          {words.howMany()}
        </ButtonLink>
        <ButtonLink wide to="/card/read-do">
          {words.card()}
        </ButtonLink>
        <ButtonLink wide to="/casualty/read">
          {words.readSheet()}
        </ButtonLink>
        <Section title={words.open()}>
          {open.length === 0 ? <EmptyState title={words.noneOpen()} /> : <Sheets of={open} />}
        </Section>
        {closed.length > 0 && (
          <Section title={words.closed()}>
            <Sheets of={closed} />
            <ButtonLink to="/forecasts">{words.forecasts()}</ButtonLink>
          </Section>
        )}
      </div>
    </Page>
  );
}

function Sheets({ of }: { readonly of: readonly CasualtyState[] }) {
  const words = useWords("casualty");
  const told = useWords("casualtyTold");
  const { units } = usePreferences();
  return (
    <ul className="casualty-sheets">
      {of.map((casualty) => (
        <li key={casualty.id}>
          <Link to={`/casualty/${casualty.id}`} className="casualty-sheet-link">
            <strong>{casualty.name}</strong>
            <span>
              {withParts(casualty.closed ? words.lineClosed : words.line, {
                boat: sayBoat(casualty.boat, units, told),
                at: <Timestamp at={casualty.opened.at} />,
                outcome: casualty.closed && sayOutcome(casualty.closed.outcome, told),
              })}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
