import type { TroubleSign } from "#kit";
import type { CasualtyPump, PumpSign } from "#readiness";
import { ButtonLink } from "../../../parts/index.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { signOf } from "./pump-state.ts";

/** Signs of the sheet as a pattern's fault finding names them. */
const TROUBLES: Partial<Readonly<Record<PumpSign, TroubleSign>>> = {
  "wont-start": "will-not-start",
  "no-water": "no-prime",
  "sucks-air": "loses-prime",
  weak: "weak-delivery",
};

/** To what may be behind it, one thing to try at a time; only where the kit's pattern says what to try. */
export function FaultLink({ pump }: { readonly pump: CasualtyPump }) {
  const { casualty, view } = useSheet();
  const kit = view.kits.find(({ id }) => id === pump.kit);
  if (!kit || view.patterns.get(kit.pattern)?.troubles === undefined) return null;
  const seen = signOf(casualty, pump)?.sign;
  const sign = seen && TROUBLES[seen];
  const query = new URLSearchParams({ casualty: casualty.id, ...(sign ? { sign } : {}) });
  return (
    <ButtonLink wide to={`/kit/${kit.id}/fault?${query.toString()}`}>
      Find the fault
    </ButtonLink>
  );
}
