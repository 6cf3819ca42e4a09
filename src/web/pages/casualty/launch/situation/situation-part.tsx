import { Section, TextField } from "#web/parts/index.ts";
import type { Call, Told } from "../before-launch.ts";
import { SITUATION_FIELDS, SITUATION_LIMITS } from "./situation.ts";

/** Where she is, how she drifts, and who else can help: kept, and handed on to the sheet and the timeline. */
export function SituationPart({ call, onChange }: { readonly call: Call; readonly onChange: (part: Told) => void }) {
  return (
    <Section title="Where she is" beside={<span className="quiet">goes on to her sheet</span>}>
      {SITUATION_FIELDS.map(({ id, label, hint }) => (
        <TextField
          key={id}
          label={label}
          hint={hint}
          value={call[id] ?? ""}
          onChange={(text) => onChange({ [id]: text })}
          limit={SITUATION_LIMITS[id]}
        />
      ))}
    </Section>
  );
}
