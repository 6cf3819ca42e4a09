import { briefingOf, type Pattern } from "#kit";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("handOver");
  const briefing = briefingOf(pattern);
  if (briefing === undefined) return null;
  return (
    <Section title={words.sayThis()}>
      <ol className="briefing">
        {briefing.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <Choice
        label={words.saidBack()}
        value={briefed === undefined ? undefined : briefed ? "yes" : "no"}
        onChange={(chosen) => onBriefed(chosen === "yes")}
        options={[
          { value: "yes", label: words.saidYes() },
          { value: "no", label: words.saidNo() },
        ]}
      />
    </Section>
  );
}
