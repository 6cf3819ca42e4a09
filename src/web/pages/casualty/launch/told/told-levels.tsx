import { useWords, withParts } from "#web/language/index.ts";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { sayTyped } from "../sizes.ts";
import type { ToldLevel } from "./tellings.ts";

/** Levels told so far: two of them say how fast it rises, better than a word does. */
export function ToldLevels({ of }: { readonly of: readonly ToldLevel[] }) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  if (of.length === 0) return null;
  const levels = of.map(({ at, water }, i) => (
    <span key={at}>
      {i > 0 && ", "}
      {withParts(words.toldAt, {
        water: <strong>{sayTyped("water", water, units)}</strong>,
        at: <Timestamp at={new Date(at).toISOString()} as="time" />,
      })}
    </span>
  ));
  return (
    <p className="quiet">
      {withParts(words.told, { levels, more: of.length === 1 ? words.toldOnce() : words.toldTwice() })}
    </p>
  );
}
