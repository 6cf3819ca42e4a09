/** Forecasts by when they were made, oldest first: rows keep their order while others are still computed. */
export function inOrder<Made extends { readonly at: string }>(forecasts: readonly Made[]): readonly Made[] {
  return forecasts.toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}
