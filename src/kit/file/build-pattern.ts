import { assert, parseQuantity } from "#base";
import type { AfterUse } from "../after-use/after-use.ts";
import { buildCard, type Beside } from "../card/build-card.ts";
import { buildPictures } from "../pictures/build-pictures.ts";
import { wholesOf } from "./file-choices.ts";
import type { CheckFile, ItemFile, PatternFile, StepFile } from "./pattern-file.ts";
import type { Check, Engine, Item, Mode, Pattern, PatternHydraulics, Stage, Step } from "../pattern.ts";

/** The pattern a faultless file describes: flat lists, SI, steps numbered through. */
export function buildPattern(file: PatternFile, beside: Beside): Pattern {
  const pictures = buildPictures(file, beside);
  const { items, stages, hydraulics, engine, afterUse, stranger, ...head } = file;
  return {
    ...head,
    items: items.map((item) => buildItem(item, items)),
    modes: items.flatMap((item) => item.modes.map((mode): Mode => ({ ...mode, item: item.id }))),
    checks: items.flatMap((item) => item.checks.map((check) => buildCheck(check, item.id))),
    stages: buildStages(stages),
    ...(hydraulics === undefined ? {} : { hydraulics: hydraulics satisfies PatternHydraulics }),
    ...(engine === undefined ? {} : { engine: engine satisfies Engine }),
    ...(afterUse === undefined ? {} : { afterUse: afterUse satisfies AfterUse }),
    ...(stranger === undefined ? {} : { stranger: buildCard(stranger, `${head.id}@${head.version}`, beside) }),
    ...(pictures && { pictures }),
  };
}

function buildItem(item: ItemFile, all: readonly ItemFile[]): Item {
  const { modes: _modes, checks: _checks, ...own } = item;
  const place = [item, ...wholesOf(item, all)].find((one) => one.place !== undefined)?.place;
  assert(place, `${item.id} has no place`);
  return { ...own, place };
}

function buildCheck(check: CheckFile, item: string): Check {
  if (check.kind !== "measure") return { ...check, item };
  const { atLeast, atMost, ...own } = check;
  const si = (text: string) => parseQuantity(text, check.dimension);
  return {
    ...own,
    item,
    ...(atLeast === undefined ? {} : { atLeast: si(atLeast) }),
    ...(atMost === undefined ? {} : { atMost: si(atMost) }),
  };
}

function buildStages(stages: PatternFile["stages"]): readonly Stage[] {
  let line = 0;
  return stages.map((stage) => ({ ...stage, steps: stage.steps.map((step) => buildStep(step, (line += 1))) }));
}

function buildStep(step: StepFile, line: number): Step {
  const { people, minutes, tools, ...own } = step;
  return { ...own, line, needs: { people, minutes, tools } };
}
