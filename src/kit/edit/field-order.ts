import { fieldAt } from "./form-fields.ts";
import type { FilePath } from "../file/yaml-source.ts";

/** The order in which the fields of the block at a path are written: that of the schema. */
export function fieldOrderAt(path: FilePath): readonly string[] {
  const field = fieldAt(path);
  if (field?.kind === "block") return field.fields.map(({ name }) => name);
  return field?.kind === "choice" ? [...new Set(field.of.flatMap(({ fields }) => fields.map(({ name }) => name)))] : [];
}
