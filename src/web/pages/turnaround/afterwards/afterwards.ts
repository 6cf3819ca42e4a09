import type { Ask, Line } from "#web/act/lines.ts";

/**
 * What the pattern says is done once a line is answered, where these asks are the last of it: shown before the answer,
 * for the answer leads on to the next line.
 *
 * @param asks - what is on the screen to be answered
 * @returns nothing while another ask of the line is open
 */
export function afterwardsAt({ step, asks: all }: Line, asks: readonly Ask[]): string | undefined {
  const isLast = all.every((one) => one.answered !== undefined || asks.some(({ key }) => key === one.key));
  return isLast ? step.afterwards : undefined;
}
