import { printGiven, type Fault } from "#base";
import type { z } from "zod";

/** Adds a fault with a code of its own to what a schema finds. */
export function refuse(
  context: z.RefinementCtx,
  path: readonly (string | number)[],
  fault: Omit<Fault, "field" | "got"> & { readonly got: unknown },
): void {
  const got = typeof fault.got === "string" && fault.got !== "" ? fault.got : printGiven(fault.got);
  const told: Fault = { ...fault, got, field: "" };
  context.addIssue({ code: "custom", message: fault.allowed, path: [...path], params: { fault: told } });
}
