import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { sayTyped } from "../sizes.ts";
import type { ToldLevel } from "./tellings.ts";

/** Levels told so far: two of them say how fast it rises, better than a word does. */
export function ToldLevels({ of }: { readonly of: readonly ToldLevel[] }) {
  const { units } = usePreferences();
  if (of.length === 0) return null;
  return (
    <p className="quiet">
      Told:{" "}
      {of.map(({ at, water }, i) => (
        <span key={at}>
          {i > 0 && ", "}
          <strong>{sayTyped("water", water, units)}</strong> at <Timestamp at={new Date(at).toISOString()} as="time" />
        </span>
      ))}
      .{" "}
      {of.length === 1
        ? "Told again in two minutes, tap it again: two levels say how fast it rises."
        : "The rise is taken from these."}
    </p>
  );
}
