/**
 * How long a journey waits for anything it needs [ms]: no measure of the program, only where waiting is given up. A
 * machine may have much other work.
 */
export const PATIENCE_MS = 180_000;
