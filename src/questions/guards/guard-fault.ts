import { printGiven, type Fault } from "#base";

/** A fault in what was told, the value printed as it was understood. */
export function faultOf(code: string, field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code, field, got: typeof got === "string" ? got : printGiven(got), allowed, remedy };
}

/** A length in a fault, to the millimetre. */
export function metres(si: number): string {
  return `${Number(si.toFixed(3))} m`;
}
