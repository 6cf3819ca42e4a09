import type { DeviceDatabase } from "../device-database.ts";
import { makeDataKey } from "./cipher.ts";
import { rewriteRows, type OnProgress } from "./conversion.ts";
import {
  makePasskeySalt,
  openWithPasskey,
  openWithPin,
  wrapForPasskey,
  wrapForPin,
  type Opened,
  type Owner,
  type PasskeySecret,
} from "./key-wrap.ts";
import { LOCK_NOTE, type LockRecord, type PasskeyWrap, type Wrap } from "./lock-record.ts";

export type LockState =
  /** Everything lies in the clear. */
  | { readonly kind: "off" }
  /** Nothing can be read before somebody opens it. */
  | { readonly kind: "locked" }
  | { readonly kind: "open" };

/**
 * The lock on what a device keeps. One random key seals every row; each person who may open the device has that key
 * wrapped by a key of their own, derived from their PIN or given by their passkey.
 */
export class StoreLock {
  readonly #db: DeviceDatabase;
  #record: LockRecord | undefined;

  constructor(db: DeviceDatabase) {
    this.#db = db;
  }

  get state(): LockState {
    if (this.#record === undefined) return { kind: "off" };
    return this.#db.rowSeal.key === undefined ? { kind: "locked" } : { kind: "open" };
  }

  /** True where rows of both sorts lie side by side. */
  get isChanging(): boolean {
    return this.#record !== undefined && this.#record.stage !== "sealed";
  }

  /** The key, to be handed to another window of this device. */
  get key(): CryptoKey | undefined {
    return this.#db.rowSeal.key;
  }

  /** Who can open it, and how. */
  get wraps(): readonly Pick<Wrap, "person" | "kind">[] {
    return this.#record?.wraps ?? [];
  }

  /** Passkeys that can open it, with the salt that each of them needs. */
  get passkeys(): readonly Pick<PasskeyWrap, "credential" | "salt">[] {
    return this.#record?.wraps.filter((wrap) => wrap.kind === "passkey") ?? [];
  }

  /** Reads the lock as it stands on the disk. */
  async read(): Promise<void> {
    this.#record = (await this.#db.notes.get(LOCK_NOTE))?.value as LockRecord | undefined;
    this.#db.rowSeal.isSealing = this.#record !== undefined && this.#record.stage !== "unsealing";
  }

  /**
   * Locks what is kept here: first the wrapped key is on the disk, then row after row is sealed.
   *
   * @param pin - of the owner; it must be known to be right, since nothing else will open the device
   */
  async turnOn(owner: Owner, pin: string, onProgress: OnProgress = () => undefined): Promise<void> {
    if (this.#record !== undefined) throw new Error("Broken invariant: a lock turned on twice");
    const key = await makeDataKey();
    await this.#keep({ stage: "sealing", wraps: [await wrapForPin(key, owner, pin)], last: owner.person });
    this.#db.rowSeal.key = key;
    await this.finish(onProgress);
  }

  /** Unseals row after row; the wrapped key goes last. */
  async turnOff(onProgress: OnProgress = () => undefined): Promise<void> {
    await this.#keep({ ...this.#held(), stage: "unsealing" });
    await this.finish(onProgress);
  }

  /** Goes on with a conversion that was stopped, or seals what another window wrote in the clear. */
  async finish(onProgress: OnProgress = () => undefined): Promise<void> {
    const { stage } = this.#held();
    const { rowSeal } = this.#db;
    if (stage === "sealed" && !rowSeal.hasStrays) return;
    await rewriteRows(this.#db.tables, onProgress);
    rowSeal.hasStrays = false;
    if (stage === "unsealing") await this.#remove();
    else await this.#keep({ ...this.#held(), stage: "sealed" });
  }

  /** Tries a PIN on every wrap there is. */
  async openWithPin(pin: string): Promise<Opened | undefined> {
    const wraps = this.#held().wraps.filter((wrap) => wrap.kind === "pin");
    const tried = await Promise.all(wraps.map((wrap) => openWithPin(wrap, pin)));
    return this.#opened(tried.find((one) => one !== undefined));
  }

  /** Tries what a passkey derived. */
  async openWithPasskey({
    credential,
    secret,
  }: Pick<PasskeySecret, "credential" | "secret">): Promise<Opened | undefined> {
    const wrap = this.#held().wraps.find((one) => one.kind === "passkey" && one.credential === credential);
    return this.#opened(wrap?.kind === "passkey" ? await openWithPasskey(wrap, secret) : undefined);
  }

  /** Takes the key from another window of this device that is open. */
  takeKey(key: CryptoKey): void {
    this.#db.rowSeal.key = key;
  }

  /** Everything was removed from the device, the lock with it. */
  forget(): void {
    this.#record = undefined;
    Object.assign(this.#db.rowSeal, { key: undefined, isSealing: false, hasStrays: false });
  }

  /** From now on this PIN opens the device for this person, and no PIN of theirs from before. */
  async setPin(owner: Owner, pin: string): Promise<void> {
    const wrap = await wrapForPin(this.#openKey(), owner, pin);
    await this.#change((wraps) => [...wraps.filter((one) => !isOf(one, owner.person, "pin")), wrap]);
  }

  /** Lets go of the key: the device is as if it had just been opened. */
  dropKey(): void {
    this.#db.rowSeal.key = undefined;
  }

  makePasskeySalt(): Uint8Array<ArrayBuffer> {
    return makePasskeySalt();
  }

  /** From now on this passkey opens the device too. */
  async addPasskey(owner: Owner, given: PasskeySecret): Promise<void> {
    const wrap = await wrapForPasskey(this.#openKey(), owner, given);
    const isSame = (one: Wrap) => one.kind === "passkey" && one.credential === given.credential;
    await this.#change((wraps) => [...wraps.filter((one) => !isSame(one)), wrap]);
  }

  /** Nothing of this person's opens the device any more. The last who can open it stays. */
  async removePerson(person: string): Promise<void> {
    await this.#change((wraps) => {
      const left = wraps.filter((one) => one.person !== person);
      return left.some(({ kind }) => kind === "pin") ? left : wraps;
    });
  }

  async #opened(opened: Opened | undefined): Promise<Opened | undefined> {
    if (opened === undefined) return undefined;
    this.#db.rowSeal.key = opened.key;
    await this.#keep({ ...this.#held(), last: opened.person });
    return opened;
  }

  /** Changes the wraps as they stand on the disk: another window may have changed them since. */
  async #change(change: (wraps: readonly Wrap[]) => readonly Wrap[]): Promise<void> {
    await this.#db.transaction("rw", this.#db.notes, async () => {
      await this.read();
      await this.#keep({ ...this.#held(), wraps: change(this.#held().wraps) });
    });
  }

  async #keep(record: LockRecord): Promise<void> {
    await this.#db.notes.put({ key: LOCK_NOTE, value: record });
    this.#record = record;
    this.#db.rowSeal.isSealing = record.stage !== "unsealing";
  }

  async #remove(): Promise<void> {
    await this.#db.notes.delete(LOCK_NOTE);
    this.forget();
  }

  #held(): LockRecord {
    if (this.#record === undefined) throw new Error("Broken invariant: no lock on this device");
    return this.#record;
  }

  #openKey(): CryptoKey {
    const { key } = this.#db.rowSeal;
    if (key === undefined) throw new Error("Broken invariant: a lock changed while it is locked");
    return key;
  }
}

function isOf(wrap: Wrap, person: string, kind: Wrap["kind"]): boolean {
  return wrap.person === person && wrap.kind === kind;
}
