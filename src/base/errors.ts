/** One thing wrong with what was given: where, what was got, what is allowed and what to do about it. */
export interface Fault {
  /** Room letters and a number that is never reused, such as "HY-104"; listed in docs/errors.md. */
  readonly code: string;
  /** Path of the field as the person or script named it, such as "suction.lift". */
  readonly field: string;
  /** What was given, shortened to something printable. */
  readonly got: string;
  /** What would have been accepted. */
  readonly allowed: string;
  /** What to do next, in the person's words. */
  readonly remedy: string;
}

/** Bad input. Carries every fault found, not only the first, and never a partial result. */
export class InputError extends Error {
  override readonly name = "InputError";
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(describeFault).join("\n"));
    this.faults = faults;
  }
}

/** A fault as one readable line: where, what was got, what is allowed, what to do. */
export function describeFault(fault: Fault): string {
  return `${fault.code} ${fault.field}: got ${fault.got}; allowed: ${fault.allowed}. ${fault.remedy}`;
}

/** True for an InputError, also one that crossed a worker or module boundary and lost its prototype. */
export function isInputError(thrown: unknown): thrown is InputError {
  return (
    typeof thrown === "object" &&
    thrown !== null &&
    (thrown as { name?: unknown }).name === "InputError" &&
    Array.isArray((thrown as { faults?: unknown }).faults)
  );
}

/** Prints any given value short enough for an error message, on one line. */
export function printGiven(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = typeof value === "string" ? JSON.stringify(value) : printOther(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** A field's name short enough for an error message. */
export function cutName(name: string): string {
  return name.length > 80 ? `${name.slice(0, 77)}...` : name;
}

function printOther(value: unknown): string {
  if (typeof value === "number" || typeof value === "bigint") return String(value);
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return "what cannot be printed";
  }
}

/** Marks a broken promise inside our own code: a bug, never caught below the doors. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(`Broken invariant: ${message}`);
}

/** Closes a union: reached only by a bug. */
export function unreachable(value: never): never {
  throw new Error(`Broken invariant: unexpected ${printGiven(value)}`);
}

/** Guards a room's door: NaN and Infinity never leave. */
export function assertFinite(value: number, what: string): number {
  assert(Number.isFinite(value), `${what} is ${value}`);
  return value;
}
