import type { Fault } from "#base";
import type { Change } from "#flooding";
import { z } from "zod";
import { faultOf } from "../guards/guard-fault.ts";
import { quantity } from "../quantity-field.ts";

/** What is known to change on the way. */
export const eventIn = z.strictObject({
  at: quantity("time", "When", { atLeast: 0 }),
  kind: z.enum(["pump-stops", "pump-starts", "pump-fails", "throttle", "patch", "opens"]),
  name: z.string().trim().describe("Name of the pump or opening it happens to"),
  share: quantity("ratio", "What is left: of a pump's delivery (throttle) or of an opening (patch, opens)", {
    atLeast: 0,
    atMost: 10,
  }).optional(),
});

type FloodEvent = z.output<typeof eventIn>;

/** QU-131: a name that stands for nothing here. */
export function unknownName(field: string, got: string, names: readonly string[]): Fault {
  return {
    code: "QU-131",
    field,
    got: JSON.stringify(got),
    allowed: names.join(", "),
    remedy: "Use one of these names.",
  };
}

/** What an event leaves where no share is told. */
const USUAL = { "pump-stops": 0, "pump-starts": 1, "pump-fails": 0, throttle: 1, patch: 0.5, opens: 1 } as const;

/** An event as the simulation takes it. */
export function resolveEvent(
  event: FloodEvent,
  index: number,
  targets: { readonly pumps: readonly string[]; readonly openings: readonly string[] },
  faults: Fault[],
): Change {
  const { at, name } = event;
  const isOpening = event.kind === "patch" || event.kind === "opens";
  const names = isOpening ? targets.openings : targets.pumps;
  if (!names.includes(name)) faults.push(unknownName(`events[${index}].name`, name, names));
  faults.push(...wrongShare(event, `events[${index}].share`));
  const share = event.share ?? USUAL[event.kind];
  if (isOpening)
    return { kind: "opening-share", at, opening: name, share, says: event.kind === "patch" ? "patched" : "opened" };
  return { kind: "pump-share", at, pump: name, share, says: event.kind === "pump-fails" ? "failed" : event.kind };
}

/** The most an event leaves: a patch makes no hole larger, a stopped pump moves nothing, none twice its own. */
const MOST: Readonly<Record<FloodEvent["kind"], readonly [share: number, remedy: string]>> = {
  patch: [1, "A patch leaves a part of the hole, 0.4 or 40 %; for a hole that grows say opens."],
  "pump-stops": [0, "A pump that stops moves nothing: leave the share out, or say throttle."],
  "pump-fails": [0, "A pump that fails moves nothing: leave the share out, or say throttle."],
  throttle: [2, "Of what the pump is stated to move: 0.7 or 70 %."],
  "pump-starts": [2, "Of what the pump is stated to move: 0.7 or 70 %."],
  opens: [10, "Of the opening as it was given."],
};

/** QU-132: more left than such an event leaves. */
function wrongShare({ kind, share = 0 }: FloodEvent, field: string): readonly Fault[] {
  const [most, remedy] = MOST[kind];
  return share <= most ? [] : [faultOf("QU-132", field, share, `at most ${most} after ${kind}`, remedy)];
}
