import type { Effect, Pattern } from "#kit";
import { useWords } from "../language/index.ts";
import { TextField } from "../parts/index.ts";
import { Choice } from "../parts/fields/choice.tsx";
import { OTHER, sayEffect, type FindingChoice, type PickedMode } from "./finding-choice.ts";

interface OtherModeProps {
  readonly pattern: Pattern;
  readonly choices: readonly FindingChoice[];
  readonly picked: PickedMode | undefined;
  readonly onPick: (mode: PickedMode) => void;
}

const EFFECTS: readonly Effect[] = ["grounds", "limits", "notes"];

/** Something the pattern does not know: on which item, and what it means for the kit. */
export function OtherMode({ pattern, choices, picked, onPick }: OtherModeProps) {
  const words = useWords("act");
  const lineWords = useWords("kitLine");
  const item = picked?.item ?? choices[0]?.item.id ?? "";
  const change = (part: Partial<PickedMode>) => onPick({ item, mode: OTHER, effect: "grounds", ...picked, ...part });
  const offered = [...new Set([...choices.map((choice) => choice.item), ...pattern.items])];
  return (
    <>
      <label className="field">
        <span className="field-label">{words.onWhichItem()}</span>
        <select className="field-input" value={item} onChange={(event) => change({ item: event.target.value })}>
          <option value="">{words.chooseItem()}</option>
          {offered.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <Choice
        label={words.whatEffect()}
        options={EFFECTS.map((effect) => ({ value: effect, label: sayEffect(effect, lineWords) }))}
        value={picked?.effect}
        onChange={(effect) => onPick(withEffect({ item, mode: OTHER, effect }, picked?.limit))}
      />
      {picked?.effect === "limits" && (
        <TextField label={words.limitHeard()} value={picked.limit ?? ""} onChange={(limit) => change({ limit })} />
      )}
    </>
  );
}

/** A limit goes only with the effect that has one. */
function withEffect(mode: PickedMode, limit: string | undefined): PickedMode {
  return mode.effect === "limits" && limit !== undefined ? { ...mode, limit } : mode;
}
