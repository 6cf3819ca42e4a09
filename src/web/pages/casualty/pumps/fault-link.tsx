import { useWords } from "#web/language/index.ts";
import type { TroubleSign } from "#kit";
import type { CasualtyPump, PumpSign } from "#readiness";
import { ButtonLink } from "#web/parts/index.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { signOf } from "./pump-state.ts";

/** Signs of the sheet as fault finding may name them: a pump that stands in the water has no prime to lose. */
const TROUBLES: Partial<Readonly<Record<PumpSign, readonly TroubleSign[]>>> = {
  "wont-start": ["will-not-start"],
  "no-water": ["no-prime", "no-water"],
  "sucks-air": ["loses-prime", "no-water"],
  weak: ["weak-delivery"],
};

/** To what may be behind it, one thing to try at a time; only where the kit's pattern says what to try. */
export function FaultLink({ pump }: { readonly pump: CasualtyPump }) {
  const words = useWords("sheetPumps");
  const { casualty, view } = useSheet();
  const kit = view.kits.find(({ id }) => id === pump.kit);
  const troubles = kit && view.patterns.get(kit.pattern)?.troubles;
  if (!kit || troubles === undefined) return null;
  const seen = signOf(casualty, pump)?.sign;
  const sign = troubleOf(troubles, seen);
  const query = new URLSearchParams({ casualty: casualty.id, ...(sign ? { sign } : {}) });
  return (
    <div className="pump-fault">
      <ButtonLink wide to={`/kit/${kit.id}/fault?${query.toString()}`}>
        {words.findFault()}
      </ButtonLink>
    </div>
  );
}

/** The sign by which a pattern's fault finding knows what was seen; nothing where it has to be asked. */
export function troubleOf(
  troubles: readonly { readonly sign: TroubleSign }[],
  seen: PumpSign | undefined,
): TroubleSign | undefined {
  const named = seen === undefined ? [] : (TROUBLES[seen] ?? []);
  return named.find((sign) => troubles.some((one) => one.sign === sign));
}
