/**
 * Work at a kit that a fault can forbid. `fuel`: lets fuel flow or opens it. `start`: starts the machine or runs it on.
 * `spark`: makes a spark where fuel may be. `water`: pumps water, or puts a hose under pressure. `wrapping`: closes the
 * wrapping over the machine. `lid`: closes the container.
 */
export type Work = "fuel" | "start" | "spark" | "water" | "wrapping" | "lid";

export const WORKS = ["fuel", "start", "spark", "water", "wrapping", "lid"] as const satisfies readonly Work[];
