/** What a PIN looks like: how many figures are taken is said in {@link PIN_RULE}. */
export const PIN_SHAPE = /^\d{6,12}$/;

/** What a new PIN must be, in a person's words. Said where it is chosen, and again where it is refused. */
export const PIN_RULE = "6 to 12 figures, not all the same and not in a row like 123456 or 987654";

/**
 * What makes a PIN unfit. One rule for the pad that it is chosen on and for the server that keeps it.
 *
 * @param pin - as entered
 * @returns what is wrong with it, to be put after "it has"; undefined where it is fit
 * @example pinWeakness("123456") // "figures in a row"
 */
export function pinWeakness(pin: string): string | undefined {
  if (/\D/.test(pin)) return "something other than figures";
  if (!PIN_SHAPE.test(pin)) return pin.length < 6 ? "fewer than 6 figures" : "more than 12 figures";
  const steps = Array.from(pin.slice(1), (figure, i) => Number(figure) - Number(pin[i]));
  if (steps.every((step) => step === 0)) return "the same figure throughout";
  if (steps.every((step) => step === 1) || steps.every((step) => step === -1)) return "figures in a row";
  return undefined;
}
