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

/** How a fleet is pooled, and no fleet: the answer would be the same without it. */
export const POOLING_OF_NONE = {
  code: "QU-217",
  allowed: "pooling with a fleet, or neither",
  remedy:
    "Give the others alike as `fleet`, each with its own record, or leave `pooling` out: there is nothing to pool.",
};
