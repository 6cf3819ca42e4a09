import type { TroubleCause } from "#kit";
import { mayWrite } from "#station";
import { modeNamed } from "#kit";
import { useWords } from "#web/language/index.ts";
import { ButtonLink } from "#web/parts/index.ts";
import type { FaultShared } from "./fault-shared.ts";
import { sayNote } from "./fault-words.ts";

interface RaiseLinkProps {
  readonly shared: FaultShared;
  /** What it was, or most likely is. */
  readonly cause: TroubleCause | undefined;
  readonly isEnded: boolean;
}

/** To the finding, filled in with what is known; a person still looks at it and raises it. */
export function RaiseLink({ shared, cause, isEnded }: RaiseLinkProps) {
  const { at, trouble, finding } = shared;
  const words = useWords("fault");
  if (!mayWrite(at.view.me.role, "finding-raised")) return null;
  const mode = cause?.mode === undefined ? undefined : modeNamed(at.pattern, cause.mode);
  const done = isEnded ? [...finding.tried, finding.ended] : finding.tried;
  const does = done.flatMap((id) => trouble.tries.find((one) => one.id === id)?.does ?? []);
  const query = new URLSearchParams({
    ...(mode ? { item: mode.item, mode: mode.id } : {}),
    note: sayNote({ name: trouble.name, does, refused: finding.refused, isEnded }, words),
    ...(shared.atSea && { casualty: shared.atSea.casualty }),
  });
  return (
    <ButtonLink wide to={`/kit/${at.kit.id}/finding?${query.toString()}`}>
      {words.raise()}
    </ButtonLink>
  );
}
