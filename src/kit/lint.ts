import { InputError, isInputError } from "#base";
import { cautionLint } from "./lint-cautions.ts";
import { coverageLint } from "./lint-coverage.ts";
import type { LintFault, LintHit } from "./lint-fault.ts";
import { machineLint } from "./lint-machine.ts";
import { stageLint } from "./lint-stages.ts";
import { wordingLint } from "./lint-wording.ts";
import { loadSource } from "./load-pattern.ts";
import { namesIn } from "./file-names.ts";
import type { Pattern } from "./pattern.ts";
import { readYaml, type FilePosition, type YamlSource } from "./yaml-source.ts";

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
 */
export function lintPatternText(yamlText: string, fileName: string): readonly LintFault[] {
  try {
    const source = readYaml(yamlText, fileName);
    const pattern = loadSource(source);
    const faults = hitsOf(pattern).map(({ of, ...fault }) => ({ ...fault, ...placed(source, of) }));
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

function hitsOf(pattern: Pattern): readonly LintHit[] {
  return [coverageLint, cautionLint, stageLint, machineLint, wordingLint].flatMap((lint) => lint(pattern));
}

function loadFaults(error: InputError): readonly LintFault[] {
  return error.faults.map((fault) => ({
    rule: "loads",
    where: fault.field,
    what: `${fault.code}: got ${fault.got}; allowed: ${fault.allowed}`,
    remedy: fault.remedy,
  }));
}

function placed(source: YamlSource, of: LintHit["of"]): { readonly at?: FilePosition } {
  const path = of === undefined ? undefined : namesIn(source.value)[of.what].find((one) => one.id === of.id)?.path;
  return path === undefined ? {} : { at: source.positionOf(path) };
}
