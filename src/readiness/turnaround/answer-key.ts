/** Where a line's answer is kept. */
export function answerKey(step: string, check: string | undefined): string {
  return check === undefined ? step : `${step}/${check}`;
}
