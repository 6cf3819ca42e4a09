import { InputError } from "#base";
import { z } from "zod";
import { buildPattern } from "./build-pattern.ts";
import type { Beside } from "../card/build-card.ts";
import { choiceFaults } from "./file-choices.ts";
import { shapeFaults } from "./file-faults.ts";
import { idFaults } from "./file-names.ts";
import { patternFile } from "./pattern-file.ts";
import type { Pattern } from "../pattern.ts";
import { readYaml, type YamlSource } from "./yaml-source.ts";

/**
 * Reads a pattern file into SI, or says everything that is wrong with it at once.
 *
 * @param yamlText - the file's text
 * @param fileName - its name, for the messages
 * @param beside - reads the files that stand beside it: the drawings of its card. One that is missing or cannot be read
 *   is left out of the card, and named by the lint
 * @throws InputError with every fault, each with file, line and column:
 *   KI-100 too long, KI-101 broken YAML, KI-102 unknown field, KI-103 missing field, KI-104 not what is allowed,
 *   KI-105 quantity or unit, KI-106 span, KI-107 id that names nothing, KI-108 id given twice,
 *   KI-109 outside its limits, KI-110 one of two fields needed
 * @example loadPattern(text, "brinnet-450@2.yaml").items.length
 */
export function loadPattern(yamlText: string, fileName: string, beside: Beside = nothingBeside): Pattern {
  return loadSource(readYaml(yamlText, fileName), beside);
}

/** The pattern of a source already read. */
export function loadSource(source: YamlSource, beside: Beside): Pattern {
  const shape = patternFile.safeParse(source.value);
  const faults = [...(shape.success ? [] : shapeFaults(shape.error.issues, source)), ...idFaults(source)];
  if (shape.success) faults.push(...choiceFaults(shape.data, source));
  if (faults.length > 0 || !shape.success) throw new InputError(faults);
  return buildPattern(shape.data, beside);
}

/** The JSON Schema of a pattern file, for editors. */
export function patternJsonSchema(): unknown {
  const schema = z.toJSONSchema(patternFile, { io: "input", target: "draft-7" });
  return { ...schema, title: "Drykeel kit pattern" };
}

/** For a pattern that stands alone: its card has no drawings. */
export function nothingBeside(): undefined {
  return undefined;
}
