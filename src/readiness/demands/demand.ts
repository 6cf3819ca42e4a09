/** One time that a kit was asked to start and give water. */
export interface Demand {
  readonly at: string;
  /** The opening in which it was asked; absent on a casualty. */
  readonly turnaround?: string;
  /** On the bench, in a turnaround, or on a casualty. */
  readonly on: "turnaround" | "casualty";
  readonly worked: boolean;
  /** What it did not do: start, give water, or give enough of it not to be grounded. */
  readonly failed?: "start" | "prime" | "delivery";
}
