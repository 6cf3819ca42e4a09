/** How many figures a PIN has. */
export const PIN_LENGTH = { least: 6, most: 12 } as const;

/** What a PIN looks like. */
export const PIN_SHAPE = new RegExp(`^\\d{${PIN_LENGTH.least},${PIN_LENGTH.most}}$`);

/** What a new PIN must be, in a person's words. Said where it is refused. */
export const PIN_RULE = "6 to 12 figures, not all the same and not in a row like 123456 or 987654";

/** What makes a PIN unfit. */
export type PinWeakness = "not figures" | "too short" | "too long" | "one figure" | "in a row";

/**
 * What makes a PIN unfit. One rule for the pad that it is chosen on and for the server that keeps it.
 *
 * @param pin - as entered
 * @returns undefined where it is fit
 * @example pinWeakness("123456") // "in a row"
 */
export function pinWeakness(pin: string): PinWeakness | undefined {
  if (/\D/.test(pin)) return "not figures";
  if (!PIN_SHAPE.test(pin)) return pin.length < PIN_LENGTH.least ? "too short" : "too long";
  const steps = Array.from(pin.slice(1), (figure, i) => Number(figure) - Number(pin[i]));
  if (steps.every((step) => step === 0)) return "one figure";
  if (steps.every((step) => step === 1) || steps.every((step) => step === -1)) return "in a row";
  return undefined;
}
