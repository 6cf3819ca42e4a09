import type { Pattern } from "#kit";
import { Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import "./hand-over.css";

interface BriefingProps {
  readonly pattern: Pattern;
  /** Undefined until somebody said. */
  readonly briefed: boolean | undefined;
  readonly onBriefed: (briefed: boolean) => void;
}

/** What to say to whoever takes the kit, and whether it was said. */
export function Briefing({ pattern, briefed, onBriefed }: BriefingProps) {
  if (pattern.briefing === undefined) return null;
  return (
    <Section title="Say this to whoever takes it">
      <ol className="briefing">
        {pattern.briefing.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <Choice
        label="Said, and understood?"
        value={briefed === undefined ? undefined : briefed ? "yes" : "no"}
        onChange={(chosen) => onBriefed(chosen === "yes")}
        options={[
          { value: "yes", label: "They said it back" },
          { value: "no", label: "There was no time" },
        ]}
      />
    </Section>
  );
}
