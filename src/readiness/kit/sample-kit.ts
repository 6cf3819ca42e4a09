import type { Check, Item, Mode, Pattern, Stage, StageId, Step } from "#kit";
import { createFold, type Entry } from "#log";
import { applyToDraft, draftKit } from "./kit-fold.ts";
import type { KitDraft } from "../draft.ts";
import type { Bodies, EntryKind } from "../kinds/kinds.ts";
import type { KitState } from "../state.ts";

/* A small invented pattern and a hand to write its log with, for the tests of this room and of those above it. */

const NOTHING = { life: { kind: "none" }, lapse: "notes", extendable: false, quantity: 1, place: "well" } as const;

const ITEMS: readonly Item[] = [
  { ...NOTHING, id: "pump", name: "Pump" },
  { ...NOTHING, id: "torch", name: "Torch" },
  { ...NOTHING, id: "cells", name: "Torch cells", life: { kind: "printed" }, lapse: "grounds" },
  { ...NOTHING, id: "fuel", name: "Fuel", life: { kind: "fitted", span: { months: 6 } }, lapse: "grounds" },
  {
    ...NOTHING,
    id: "gasket",
    name: "Lid gasket",
    life: { kind: "fitted", span: { months: 24 } },
    lapse: "limits",
    lapseLimit: "Keep it under cover.",
  },
  { ...NOTHING, id: "desiccant", name: "Desiccant", life: { kind: "single-use" }, lapse: "limits" },
];

const MODES: readonly Mode[] = [
  { id: "pump-seized", item: "pump", name: "seized", effect: "grounds", remedy: "Free the impeller." },
  { id: "pump-scratched", item: "pump", name: "scratched", effect: "notes" },
  { id: "torch-dim", item: "torch", name: "dim", effect: "limits", limit: "Take a second light." },
  { id: "cells-old", item: "cells", name: "out of date", effect: "grounds" },
];

const CHECKS: readonly Check[] = [
  { id: "turns", kind: "look", item: "pump", ask: "Turn the shaft.", expect: "It turns.", finds: ["pump-seized"] },
  { id: "paint", kind: "look", item: "pump", ask: "Look at the paint.", expect: "Whole.", finds: ["pump-scratched"] },
  { id: "light", kind: "look", item: "torch", ask: "Switch it on.", expect: "Bright.", finds: ["torch-dim"] },
  { id: "cell-date", kind: "date", item: "cells", ask: "Read the date.", expect: "In date.", finds: ["cells-old"] },
  {
    id: "volts",
    kind: "measure",
    item: "cells",
    ask: "Measure the cells.",
    expect: "At least 1.4 V.",
    finds: ["cells-old"],
    dimension: "voltage",
    unit: "V",
    atLeast: 1.4,
  },
];

type StepParts = Partial<Step> & { readonly id: string; readonly text: string };

function step(line: number, parts: StepParts): Step {
  return {
    line,
    checks: [],
    stows: [],
    renews: [],
    hazards: [],
    cautions: [],
    measuresDelivery: false,
    needs: { people: 1, minutes: 2, tools: [] },
    optional: false,
    ...parts,
  };
}

function stage(id: StageId, ...steps: readonly Step[]): Stage {
  return { id, name: id, steps };
}

export const SAMPLE_PATTERN: Pattern = {
  id: "sample",
  version: 1,
  name: "Sample pump",
  summary: "A pump made up for tests.",
  container: { name: "Drum", mass: 40, lifters: 2, places: [{ id: "well", name: "Well" }], markings: [] },
  policy: { proofRun: { months: 12 }, muster: { days: 45 }, turnaround: { months: 18 } },
  items: ITEMS,
  modes: MODES,
  checks: CHECKS,
  stages: [
    stage("open", step(1, { id: "open", text: "Open the lid." })),
    stage(
      "examine",
      step(2, { id: "look-pump", text: "Look at the pump.", checks: ["turns", "paint"] }),
      step(3, { id: "look-torch", text: "Try the torch.", checks: ["light", "cell-date", "volts"] }),
    ),
    stage(
      "run",
      step(4, { id: "start", text: "Start it.", timer: { kind: "pulls", atMost: 6 } }),
      step(5, { id: "prime", text: "Prime it.", timer: { kind: "prime", atMost: 60 } }),
      step(6, { id: "warm", text: "Warm it up.", timer: { kind: "run", atLeast: 300 } }),
    ),
    stage("spare-start", step(7, { id: "spare", text: "Start it with the spare cord.", optional: true })),
    stage(
      "restow",
      step(8, { id: "stow", text: "Put all back.", stows: ["pump", "torch", "cells"], renews: ["desiccant"] }),
      step(9, { id: "refuel", text: "Fill with new fuel.", renews: ["fuel"] }),
    ),
    stage("seal", step(10, { id: "close", text: "Close the lid." })),
  ],
  engine: { tank: 0.005, burn: [{ throttle: 1, burn: 4e-7 }], fuel: "petrol", fuelItem: "fuel" },
};

/** Every line of the sample pattern, as an answer names it. */
export const SAMPLE_LINES: readonly { readonly step: string; readonly check?: string }[] = SAMPLE_PATTERN.stages
  .flatMap((one) => one.steps)
  .filter((one) => !one.optional)
  .flatMap((one) =>
    one.checks.length === 0 ? [{ step: one.id }] : one.checks.map((check) => ({ step: one.id, check })),
  );

/** Writes entries about one kit in order, a minute apart, each in sight of all that its device has seen. */
export class Hand {
  readonly entries: Entry[] = [];
  private seen: readonly string[] = [];

  constructor(
    readonly device = "tablet",
    private minute = 0,
    private readonly day = "2026-01-10",
    readonly kit = "k1",
  ) {}

  write<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind], day = this.day): Entry<Kind, Bodies[Kind]> {
    const entry = {
      id: idOfNumber(this.minute, this.device),
      place: "north",
      subject: `kit:${this.kit}`,
      kind,
      at: `${day}T${clock(this.minute++)}Z`,
      by: "ann",
      device: this.device,
      pattern: "sample@1",
      after: this.seen,
      body,
    };
    this.entries.push(entry);
    this.seen = [entry.id];
    return entry;
  }

  /** Another device that has seen all of this up to now. */
  fork(device: string): Hand {
    const other = new Hand(device, this.minute, this.day, this.kit);
    other.seen = this.seen;
    return other;
  }

  /** Takes on the kit, with the seal 00417 and everything in date. */
  enrol(): this {
    const items = ["cells", "fuel", "gasket"].map((item) => ({ item, fitted: "2026-01-10", quantity: 1 }));
    const withDate = items.map((one) => (one.item === "cells" ? { ...one, printed: "2027-03" } : one));
    this.write("kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "00417", items: withDate });
    return this;
  }

  open(turnaround = "t1", sealSeen = "00417"): this {
    this.write("turnaround-opened", { turnaround, because: "routine", sealSeen });
    return this;
  }

  /** Answers every line seen right, runs what is to run, and fits what is used once. */
  doAll(turnaround = "t1"): this {
    for (const line of SAMPLE_LINES) this.write("step-answered", seenRight(turnaround, line));
    this.write("pulls-counted", { turnaround, step: "start", pulls: 3, started: true });
    this.write("prime-timed", { turnaround, step: "prime", seconds: 32, primed: true });
    const started = `${this.day}T00:00:00Z`;
    this.write("timer-stopped", { turnaround, step: "warm", started, seconds: 310, reached: true });
    for (const item of ["desiccant", "fuel"]) {
      this.write("item-fitted", { turnaround, step: "stow", item, fitted: this.day, quantity: 1 });
    }
    return this;
  }

  seal(seal = "00500", turnaround = "t1"): this {
    this.write("sealed", { turnaround, seal });
    return this;
  }
}

/** Answer to a line, with the reading its check asks for. */
export function seenRight(turnaround: string, line: (typeof SAMPLE_LINES)[number]): Bodies["step-answered"] {
  const base = { turnaround, ...line, answer: "seen" as const };
  if (line.check === "cell-date") return { ...base, value: { kind: "date", date: "2027-03" } };
  if (line.check !== "volts") return base;
  return { ...base, value: { kind: "quantity", si: 1.52, dimension: "voltage", text: "1.52 V" } };
}

/** The kit that these entries make, folded by the log. */
export function kitOf(...hands: readonly { readonly entries: readonly Entry[] }[]): KitState {
  return kitFrom(hands.flatMap((hand) => hand.entries));
}

const SHELF: ReadonlyMap<string, Pattern> = new Map([["sample@1", SAMPLE_PATTERN]]);

/** The kit that these entries make, in whatever order they come. */
export function kitFrom(entries: readonly Entry[], shelf = SHELF): KitState {
  const fold = createFold<KitDraft | undefined>({
    init: () => undefined,
    apply: (draft, entry, history) => {
      const next = draft ?? draftKit(entry, history, shelf);
      applyToDraft(next, entry);
      return next;
    },
  });
  fold.add(entries);
  const [subject] = fold.subjects();
  const draft = fold.state(subject ?? "");
  if (!draft) throw new Error("These entries make no kit.");
  return draft.release();
}

function idOfNumber(minute: number, device: string): string {
  const hex = minute.toString(16).padStart(12, "0");
  const tail = [...device].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 0xffffffff, 7);
  return `${hex.slice(0, 8)}-${hex.slice(8)}-7000-8000-${tail.toString(16).padStart(12, "0")}`;
}

function clock(minute: number): string {
  return `${twoDigits(8 + Math.floor(minute / 60))}:${twoDigits(minute % 60)}:00`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}
