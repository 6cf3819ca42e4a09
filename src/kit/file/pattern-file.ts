import { dimensions, type Dimension } from "#base";
import { z } from "zod";
import {
  bareNumber,
  block,
  countNumber,
  idText,
  lifeText,
  listOf,
  oneWord,
  quantityText,
  readingText,
  spanText,
} from "./schema-fields.ts";
import { afterField, afterUseBlock } from "../after-use/after-use-file.ts";
import { HAZARDS } from "../hazards.ts";
import { cardBlock } from "../card/card-file.ts";
import { engineBlock, hydraulicsBlock } from "./machine-file.ts";
import { troublesBlock } from "../trouble/trouble-file.ts";
import { STAGE_ORDER } from "../stage-order.ts";
import { TRENDS } from "../trends.ts";
import { WORKS } from "../work/work.ts";

/*
 * The pattern file as it is written in YAML. Modes and checks stand under the item they belong to, so that the
 * whole story of one item reads in one place.
 */

const DIMENSIONS = dimensions() as [Dimension, ...Dimension[]];
const effect = (about: string) => oneWord(["grounds", "limits", "notes"], about);

const works = (about: string) => listOf(oneWord(WORKS, "A sort of work."), 0, about).exactOptional();

const modeBlock = block(
  {
    id: idText("Id of the mode, one of a kind in the pattern."),
    name: readingText(80, "What is wrong, as a person would say it."),
    effect: effect("What it does to the kit: grounds it, limits it, or is only noted."),
    limit: readingText(160, "The limit to state while it lasts; needed where the effect is limits.").exactOptional(),
    remedy: readingText(160, "What to do about it first.").exactOptional(),
    forbids: works("Work that waits while it is found: defaults to what the hazards of its steps tell."),
    provedBy: listOf(
      idText("Id of a check."),
      0,
      "Ids of checks that prove it gone beside those that find it.",
    ).exactOptional(),
    loss: z
      .boolean({ error: "true or false" })
      .describe("True if it says only that the item is not there: lost or taken, which is no wear.")
      .exactOptional(),
  },
  "One way the item fails.",
);

const everyCheck = {
  id: idText("Id of the check, one of a kind in the pattern."),
  ask: readingText(300, "What to look at or do, as an instruction."),
  expect: readingText(300, "What right looks like."),
  finds: listOf(idText("Id of a mode."), 0, "Ids of the modes it can find, of this item or another."),
};

const checkBlock = z
  .discriminatedUnion(
    "kind",
    [
      block({ ...everyCheck, kind: z.literal("look") }, "A look."),
      block(
        {
          ...everyCheck,
          kind: z.literal("measure"),
          dimension: oneWord(DIMENSIONS, "What is measured."),
          unit: readingText(12, "Unit offered to the person."),
          atLeast: readingText(30, "Least value that is right, with its unit.").exactOptional(),
          atMost: readingText(30, "Greatest value that is right, with its unit.").exactOptional(),
          once: z
            .boolean({ error: "true or false" })
            .describe("Measured when the item is new; afterwards looked at, as what it measures does not change.")
            .exactOptional(),
          trend: oneWord(
            TRENDS,
            "What its readings tell of over the years, a volume; fuel-left is drained from a tank that was full.",
          ).exactOptional(),
          behind: listOf(
            idText("Id of a mode."),
            0,
            "Ids of the modes that may be behind readings that get worse.",
          ).exactOptional(),
        },
        "A measurement with limits.",
      ),
      block(
        {
          ...everyCheck,
          kind: z.literal("timed"),
          atLeast: quantityText("time", "5 min", "Least time that is right.").exactOptional(),
          atMost: quantityText("time", "1 min", "Greatest time that is right.").exactOptional(),
        },
        "A time taken, with limits.",
      ),
      block({ ...everyCheck, kind: z.literal("prove") }, "A proof by doing."),
      block(
        {
          ...everyCheck,
          kind: z.literal("count"),
          of: readingText(60, "What is counted."),
          exactly: countNumber(1000, "How many there must be."),
        },
        "A count.",
      ),
      block(
        {
          ...everyCheck,
          kind: z.literal("match"),
          first: readingText(60, "The first thing read."),
          second: readingText(60, "The thing it must agree with."),
          against: oneWord(
            ["recorded-seal", "recorded-tag", "recorded-serial"],
            "The second stands on record, only the first is entered. recorded-seal: the seal on record when the kit was opened; recorded-tag: what was read here last time; recorded-serial: the serial that the kit is on record under.",
          ).exactOptional(),
          reads: oneWord(
            ["quarters"],
            "quarters: both are read off a gauge or a tank as 0, 1/4, 1/2, 3/4, 4/4, full, empty, 0 to 1 or percent; the nearest quarter must agree.",
          ).exactOptional(),
        },
        "Two things that must agree, each read and entered unless the second stands on record.",
      ),
      block(
        {
          ...everyCheck,
          kind: z.literal("date"),
          beyond: oneWord(
            ["next-turnaround"],
            "next-turnaround: the date must lie beyond the day by which the next turnaround is due; today where absent.",
          ).exactOptional(),
        },
        "The date printed on the item, read and entered.",
      ),
    ],
    { error: "kind: look, measure, timed, prove, count, match or date" },
  )
  .describe("One check.");

const itemBlock = block(
  {
    id: idText("Id of the item, one of a kind in the pattern."),
    name: readingText(60, "What the item is called."),
    place: idText("Id of the place it lives in; not needed for a part of another item.").exactOptional(),
    partOf: idText("Id of the item it is fixed to and stowed with.").exactOptional(),
    quantity: countNumber(100, "How many; 1 if not said.").default(1),
    life: lifeText("none, printed, single use, or a span from fitting such as 24 months.").prefault("none"),
    lapse: effect("What the end of its life does to the kit.").default("notes"),
    lapseLimit: readingText(160, "The limit to state; needed where lapse is limits.").exactOptional(),
    unread: effect("What it does to the kit when its date cannot be read; as lapse if not said.").exactOptional(),
    unreadLimit: readingText(160, "The limit to state; needed where unread is limits.").exactOptional(),
    extendable: z.boolean({ error: "true or false" }).describe("May an inspection extend its life?").default(false),
    part: readingText(80, "Part to draw from stock when it is replaced.").exactOptional(),
    description: readingText(300, "What it is and how to know it.").exactOptional(),
    modes: listOf(modeBlock, 0, "Ways it fails.").default([]),
    checks: listOf(checkBlock, 0, "Checks made on it.").default([]),
  },
  "One thing in the kit.",
);

const timerBlock = z
  .discriminatedUnion(
    "kind",
    [
      block(
        {
          kind: z.literal("wait"),
          atLeast: quantityText("time", "2 min", "Shortest wait."),
          unattended: z
            .boolean({ error: "true or false" })
            .describe("Left alone for hours or days, such as hoses hung to dry; later stages wait for it.")
            .exactOptional(),
        },
        "A wait.",
      ),
      block(
        {
          kind: z.literal("run"),
          atLeast: quantityText("time", "5 min", "Shortest run."),
          says: readingText(120, "What to do or watch while it runs.").exactOptional(),
        },
        "A timed run.",
      ),
      block({ kind: z.literal("pulls"), atMost: countNumber(30, "Most pulls.") }, "Pulls counted."),
      block(
        { kind: z.literal("prime"), atMost: quantityText("time", "1 min", "Longest time from first stroke to water.") },
        "A prime timed from first stroke to water.",
      ),
    ],
    { error: "kind: wait, run, pulls or prime" },
  )
  .describe("A wait or run the device times from the clock on the wall.");

const ids = (about: string) => listOf(idText("An id."), 0, about).default([]);

const stepBlock = block(
  {
    id: idText("Id of the step, one of a kind in the pattern."),
    text: readingText(400, "The instruction: short, one action, with what right looks like."),
    why: readingText(300, "Why it matters.").exactOptional(),
    checks: ids("Ids of the checks answered here, in order."),
    afterwards: readingText(300, "What is done once all checks here are answered; shown at the last.").exactOptional(),
    oneLook: listOf(
      listOf(idText("Id of a check."), 2, "Checks that one look shows together."),
      1,
      "Groups of checks that one look shows together, from one place and with nothing moved in between.",
    ).exactOptional(),
    withNext: z
      .boolean({ error: "true or false" })
      .describe("Done and then confirmed with one tap together with the next line, both shown whole.")
      .exactOptional(),
    stows: ids("Ids of the items put back in their place here."),
    renews: ids("Ids of the items renewed here."),
    hazards: listOf(oneWord(HAZARDS, "A hazard."), 0, "What the step does that can hurt.").default([]),
    does: works("Work it does that a fault can forbid: defaults to what its hazards tell."),
    cautions: ids("Ids of the cautions shown before the step."),
    timer: timerBlock.exactOptional(),
    lift: block(
      {
        by: idText("Id of a machine of the container."),
        mass: quantityText("mass", "18 kg", "What hangs on it; the whole kit if not said.").exactOptional(),
      },
      "Lifted by a machine here, by the people this step needs.",
    ).exactOptional(),
    measuresDelivery: z.boolean({ error: "true or false" }).describe("Is delivery measured here?").default(false),
    people: countNumber(12, "People needed; 1 if not said.").default(1),
    minutes: bareNumber(0, 480, "Minutes it takes."),
    tools: listOf(readingText(60, "A tool."), 0, "Tools needed.").default([]),
    optional: z.boolean({ error: "true or false" }).describe("May it be left out?").default(false),
    after: afterField.exactOptional(),
  },
  "One line of the turnaround.",
);

const containerBlock = block(
  {
    name: readingText(80, "What the container is called."),
    mass: quantityText("mass", "58 kg", "Gross mass, ready to go."),
    lifters: countNumber(12, "People to lift it; where a machine does, people at the lift."),
    machines: listOf(
      block(
        {
          id: idText("Id of the machine."),
          name: readingText(60, "What it is, such as Davit on the quay."),
          safeWorkingLoad: quantityText("mass", "250 kg", "Safe working load marked on it."),
        },
        "A machine that lifts.",
      ),
      1,
      "Davits, cranes and hoists that lift it.",
    ).exactOptional(),
    places: listOf(
      block({ id: idText("Id of the place."), name: readingText(80, "Where it is.") }, "A place."),
      1,
      "Places in and on the container, in stowing order.",
    ),
    markings: listOf(readingText(160, "A marking."), 1, "What is marked on it, face by face."),
  },
  "The closed container.",
);

const policyBlock = block(
  {
    proofRun: spanText("Longest time between proof runs.").exactOptional(),
    muster: spanText("Longest time between musters.").exactOptional(),
    turnaround: spanText("Longest time between turnarounds.").exactOptional(),
  },
  "How long things hold where no item says otherwise. A station may shorten it.",
);

/** A pattern file: what is written in YAML, read into SI where a field is a quantity. */
export const patternFile = block(
  {
    id: idText("Id of the pattern; with the version it is the file's name."),
    version: countNumber(9999, "1, 2, 3 ...; a kit is built to one version."),
    name: readingText(60, "What the kit is called."),
    summary: readingText(400, "What it is and does, in a sentence or two."),
    container: containerBlock,
    policy: policyBlock,
    items: listOf(itemBlock, 1, "Everything in the kit, with how it fails and what finds that."),
    stages: listOf(
      block(
        {
          id: oneWord(STAGE_ORDER, "Which stage."),
          name: readingText(60, "What the stage is called."),
          steps: listOf(stepBlock, 1, "Its steps, in order."),
        },
        "One stage of the turnaround.",
      ),
      1,
      "The turnaround, stage by stage.",
    ),
    hydraulics: hydraulicsBlock.exactOptional(),
    engine: engineBlock.exactOptional(),
    afterUse: afterUseBlock.exactOptional(),
    troubles: troublesBlock.exactOptional(),
    briefing: listOf(readingText(120, "One thing to say."), 1, "What is said to whoever takes the kit, in order.")
      .max(8)
      .exactOptional(),
    stranger: cardBlock.exactOptional(),
  },
  "A kit's pattern.",
);

export type PatternFile = z.output<typeof patternFile>;
export type ItemFile = PatternFile["items"][number];
export type CheckFile = ItemFile["checks"][number];
export type StepFile = PatternFile["stages"][number]["steps"][number];
