import type { VacuumVerdict } from "#hydraulics";
import { z } from "zod";

/** What a vacuum reading says, as answers carry it. */
export const vacuumOut = z.strictObject({
  kind: z.enum(["pump-side", "hose-side", "no-fault-seen", "unclear"]).describe("On which side of the suction port"),
  because: z.string(),
  lookFirst: z.array(z.string()).describe("Where to look, in order"),
});

/** The same as it leaves hydraulics. */
export function vacuumVerdict({ kind, because, lookFirst }: VacuumVerdict): z.input<typeof vacuumOut> {
  return { kind, because, lookFirst: [...lookFirst] };
}
