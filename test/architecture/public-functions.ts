import { parseSync } from "vite";
import type { SourceFile } from "./source-files.ts";

export interface PublicFunction {
  readonly path: string;
  readonly name: string;
  /** Names of plain parameters in order; a destructured one is "{}". */
  readonly parameters: readonly string[];
  /** Documentation block right above it, or "". */
  readonly documentation: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly declaration?: Node | null;
  readonly id?: { readonly name: string } | null;
  readonly params?: readonly Parameter[];
}

interface Parameter {
  readonly type: string;
  readonly name?: string;
  readonly left?: Parameter;
}

/** Exported function declarations of a file with the documentation block that stands above each. */
export function publicFunctions(file: SourceFile): readonly PublicFunction[] {
  const { program, comments } = parseSync(file.path, file.text);
  return (program.body as unknown as readonly Node[]).flatMap((node) => {
    const declaration = node.type === "ExportNamedDeclaration" ? node.declaration : undefined;
    if (declaration?.type !== "FunctionDeclaration" || !declaration.id) return [];
    const above = comments.findLast((comment) => comment.end <= node.start);
    const adjacent = above && file.text.slice(above.end, node.start).trim() === "" && above.value.startsWith("*");
    return [
      {
        path: file.path,
        name: declaration.id.name,
        parameters: (declaration.params ?? []).map(parameterName),
        documentation: adjacent ? above.value : "",
      },
    ];
  });
}

function parameterName(parameter: Parameter): string {
  if (parameter.type === "AssignmentPattern" && parameter.left) return parameterName(parameter.left);
  return parameter.name ?? "{}";
}
