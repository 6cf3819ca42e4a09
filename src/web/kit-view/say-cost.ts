/**
 * A cost as it is told everywhere: "12.50 EUR"; the figure alone where the station has not said its currency.
 *
 * @param amount - in the currency of the station
 * @param currency - its three letters
 */
export function sayCost(amount: number, currency: string | undefined): string {
  return currency === undefined ? amount.toFixed(2) : `${amount.toFixed(2)} ${currency}`;
}
