import type { Ambient, Epoch, EpochStore } from "#station";
import { epochOf, Vouchers } from "./vouchers.ts";

/** Which life its database is in, and what it vouches for. */
export interface Incarnation {
  readonly epoch: string;
  readonly vouchers: Vouchers;
}

/** Knows the lives of the station's database, and begins another when one is found to have been put back. */
export class EpochDesk {
  readonly #store: EpochStore;
  readonly #ambient: Ambient;
  #key: Promise<string> | undefined;

  constructor(store: EpochStore, ambient: Ambient) {
    this.#store = store;
    this.#ambient = ambient;
  }

  /** As it is now, whichever process began it. */
  async now(): Promise<Incarnation> {
    const epoch = currentOf(await this.#store.epochs());
    return { epoch, vouchers: new Vouchers(await this.#readKey(), epoch) };
  }

  /**
   * Notes that the database lacks something it vouched for: it was put back since. A new epoch begins, unless one has
   * begun since that voucher was given.
   *
   * @param voucher - one that was found to be the station's own
   */
  async noteLost(voucher: string): Promise<void> {
    const epochs = await this.#store.epochs();
    const given = epochOf(voucher);
    const isKnown = epochs.some(({ id }) => id === given);
    if (isKnown && given !== currentOf(epochs)) return;
    const begun = this.#ambient.now();
    const seen: readonly Epoch[] = isKnown ? [] : [{ id: given, begun, because: "seen" }];
    await this.#store.addEpochs([...seen, { id: this.#ambient.newId(), begun, because: "put-back" }]);
  }

  #readKey(): Promise<string> {
    this.#key ??= this.#store.voucherKey();
    this.#key.catch(() => (this.#key = undefined));
    return this.#key;
  }
}

function currentOf(epochs: readonly Epoch[]): string {
  return epochs.findLast(({ because }) => because !== "seen")!.id;
}
