import { useWords } from "#web/language/index.ts";
import { Section, TextField } from "#web/parts/index.ts";
import type { Call, Told } from "../before-launch.ts";
import { SITUATION_FIELDS, SITUATION_HINTS, SITUATION_LIMITS } from "./situation.ts";

/** Where she is, how she drifts, and who else can help: kept, and handed on to the sheet and the timeline. */
export function SituationPart({ call, onChange }: { readonly call: Call; readonly onChange: (part: Told) => void }) {
  const words = useWords("launchTold");
  const told = useWords("casualtyTold");
  return (
    <Section title={words.where()} beside={<span className="quiet">{words.goesOn()}</span>}>
      {SITUATION_FIELDS.map((id) => (
        <TextField
          key={id}
          label={told[id]()}
          hint={words[SITUATION_HINTS[id]]()}
          value={call[id] ?? ""}
          onChange={(text) => onChange({ [id]: text })}
          limit={SITUATION_LIMITS[id]}
        />
      ))}
    </Section>
  );
}
