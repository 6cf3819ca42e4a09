import { printGiven, type Fault } from "#base";
import type { z } from "zod";
import type { OwnIssue } from "./schema-fields.ts";
import { fieldName, printPath, type FilePath, type YamlSource } from "./yaml-source.ts";

/** Turns what zod found into faults that say where in the file, what is allowed and what to do. */
export function shapeFaults(issues: readonly z.core.$ZodIssue[], source: YamlSource): readonly Fault[] {
  return issues.flatMap((issue) => faultsOf(issue, source));
}

function faultsOf(issue: z.core.$ZodIssue, source: YamlSource): readonly Fault[] {
  const path = plainPath(issue.path);
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => unknownField(source, path, key, issue.message));
  const given = valueAt(source.value, path);
  const own = issue.code === "custom" ? ownOf(issue.params) : undefined;
  const code = own?.code ?? (given === undefined ? "KI-103" : codeOf(issue.code));
  const remedy = own?.remedy ?? remedyFor(code, path);
  return [{ code, field: fieldName(source, path), got: printGiven(given), allowed: issue.message, remedy }];
}

function unknownField(source: YamlSource, path: FilePath, key: string, allowed: string): Fault {
  const here = [...path, key];
  const remedy = isTornText(source, here, key) ? QUOTE_REMEDY : "Correct the spelling, or take the field out.";
  return { code: "KI-102", field: fieldName(source, here), got: printGiven(key), allowed, remedy };
}

const QUOTE_REMEDY = "Put the text before it in quotes: inside { } a comma starts a new field.";

/** Text with a comma, written without quotes inside braces, falls apart into fields with a sentence for a name. */
function isTornText(source: YamlSource, path: FilePath, key: string): boolean {
  return valueAt(source.value, path) === null && /\s/.test(key);
}

function codeOf(issue: z.core.$ZodIssue["code"]): string {
  return issue === "too_small" || issue === "too_big" ? "KI-109" : "KI-104";
}

function remedyFor(code: string, path: FilePath): string {
  const last = printPath(path.slice(-1)) || "the pattern";
  if (code === "KI-103") return `Add \`${last}\`.`;
  return code === "KI-109" ? "Bring it within the limits." : `Write \`${last}\` as allowed.`;
}

function ownOf(params: unknown): OwnIssue | undefined {
  const { code, remedy } = (params ?? {}) as Partial<OwnIssue>;
  return code === undefined || remedy === undefined ? undefined : { code, remedy };
}

function plainPath(path: readonly PropertyKey[]): FilePath {
  return path.map((part) => (typeof part === "number" ? part : String(part)));
}

/** What stands at the path in plain values; nothing where there is nothing. */
export function valueAt(value: unknown, path: FilePath): unknown {
  return path.reduce<unknown>((inside, part) => {
    if (typeof inside !== "object" || inside === null || !Object.hasOwn(inside, part)) return undefined;
    return (inside as Record<string | number, unknown>)[part];
  }, value);
}
