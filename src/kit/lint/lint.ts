import { InputError, isInputError } from "#base";
import { afterUseLint } from "../after-use/lint-after-use.ts";
import type { Beside } from "../card/build-card.ts";
import { cardLint } from "../card/lint-card.ts";
import { cautionLint } from "./lint-cautions.ts";
import { coverageLint } from "./lint-coverage.ts";
import type { LintFault, LintHit } from "./lint-fault.ts";
import { lossLint } from "./lint-losses.ts";
import { lookLint } from "./lint-looks.ts";
import { liftingLint } from "./lint-lifting.ts";
import { machineLint } from "./lint-machine.ts";
import { pictureLint } from "../pictures/lint-pictures.ts";
import { readingLint } from "./lint-readings.ts";
import { stageLint } from "./lint-stages.ts";
import { wholeMachineLint } from "./lint-whole-machine.ts";
import { wordingLint } from "./lint-wording.ts";
import { troubleEngineLint } from "./lint-trouble-engines.ts";
import { tryLint } from "./lint-tries.ts";
import { workLint } from "./lint-work.ts";
import { loadSource, nothingBeside } from "../file/load-pattern.ts";
import { namesIn } from "../file/file-names.ts";
import type { Pattern } from "../pattern.ts";
import { readYaml, type FilePosition, type YamlSource } from "../file/yaml-source.ts";

/**
 * Judges a loaded pattern: what would leave a fault unfound, a person unwarned or a kit half stowed.
 *
 * @returns every fault, in the order of the rules; none where the pattern is sound
 */
export function lintPattern(pattern: Pattern): readonly LintFault[] {
  return hitsOf(pattern).map(({ of: _of, ...fault }) => fault);
}

/**
 * Loads and judges a pattern file: `drykeel pattern lint`. What stops it from loading comes as rule "loads";
 * every other fault says where in the file the thing it is about stands.
 *
 * @param beside - reads the files that stand beside it; without it whether drawings are there is not judged
 */
export function lintPatternText(yamlText: string, fileName: string, beside?: Beside): readonly LintFault[] {
  try {
    const source = readYaml(yamlText, fileName);
    const pattern = loadSource(source, beside ?? nothingBeside);
    const faults = hitsOf(pattern, beside).map(({ of, ...fault }) => ({ ...fault, ...placed(source, of) }));
    return [...misnamed(pattern, fileName), ...faults];
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    return loadFaults(thrown);
  }
}

/** A copy that kept the id of what it was copied from would be a second file of the same pattern. */
function misnamed({ id, version }: Pattern, fileName: string): readonly LintFault[] {
  const [given = fileName, wanted] = [fileName.split(/[/\\]/).at(-1), `${id}@${version}.yaml`];
  if (given === wanted) return [];
  const what = `The file holds ${id}@${version} and is named ${given}.`;
  return [{ rule: "file-name", where: "id", what, remedy: `Change id or version in it, or name it ${wanted}.` }];
}

const LINTS = [
  coverageLint,
  cautionLint,
  stageLint,
  machineLint,
  readingLint,
  wordingLint,
  afterUseLint,
  workLint,
  lookLint,
  liftingLint,
  wholeMachineLint,
  tryLint,
  troubleEngineLint,
  lossLint,
];

function hitsOf(pattern: Pattern, beside?: Beside): readonly LintHit[] {
  return [...LINTS.flatMap((lint) => lint(pattern)), ...cardLint(pattern, beside), ...pictureLint(pattern, beside)];
}

function loadFaults(error: InputError): readonly LintFault[] {
  return error.faults.map((fault) => ({
    rule: "loads",
    where: fault.field,
    what: `${fault.code}: got ${fault.got}; allowed: ${fault.allowed}`,
    remedy: fault.remedy,
    given: { got: fault.got, allowed: fault.allowed },
  }));
}

function placed(source: YamlSource, of: LintHit["of"]): { readonly at?: FilePosition } {
  const path = of === undefined ? undefined : namesIn(source.value)[of.what].find((one) => one.id === of.id)?.path;
  return path === undefined ? {} : { at: source.positionOf(path) };
}
