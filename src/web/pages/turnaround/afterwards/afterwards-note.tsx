import { Prose } from "#web/parts/prose.tsx";
import { useWords, withParts } from "#web/language/index.ts";
import type { Ask, Line } from "#web/act/lines.ts";
import { afterwardsAt } from "./afterwards.ts";

interface AfterwardsProps {
  readonly line: Line;
  /** What is answered here. */
  readonly asks: readonly Ask[];
}

/** What is done once the line is answered, right above its last answer: that answer leads on. */
export function Afterwards({ line, asks }: AfterwardsProps) {
  const words = useWords("turnaroundLine");
  const told = afterwardsAt(line, asks);
  if (told === undefined) return null;
  return (
    <p>
      <strong>{withParts(words.afterwards, { words: <Prose text={told} /> })}</strong>
    </p>
  );
}
