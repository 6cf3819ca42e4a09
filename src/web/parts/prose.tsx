import { sayProse } from "#words";
import { usePreferences } from "#web/theme/index.ts";

/** Words of a pattern or an answer, the reader's own units beside figures in others. */
export function Prose({ text }: { readonly text: string }) {
  return <>{sayProse(text, usePreferences().units)}</>;
}
