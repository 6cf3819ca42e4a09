/** Who and when: the part of an entry that every derived fact keeps, so that it can be traced back. */
export interface Mark {
  readonly entry: string;
  readonly at: string;
  readonly by: string;
  readonly device: string;
}
