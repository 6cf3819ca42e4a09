import type { Person } from "#readiness";
import type { SignedIn } from "#station";
import { forgetPeople } from "../held/disk-watch.ts";
import type { SignInOutcome, Sitting } from "../device-state.ts";
import type { DeviceStore, OnProgress, Progress } from "../held/device-store.ts";
import type { Reply } from "../sync/server-door.ts";
import type { SittingDesk } from "../sync/sitting-desk.ts";
import type { TabNews, TabTalk } from "../sync/tab-talk.ts";
import { BESIDE_WRITTEN, takeInBeside } from "./beside.ts";
import { drafts } from "./draft-drawer.ts";
import { askPasskey, type PasskeyAnswer } from "./passkey-secret.ts";
import { sealedCalls } from "./sealed-calls.ts";

/** How long another window may take to hand over the key [ms]. */
const BORROW_MS = 600;

/** How often the page is told how far it is [ms]. */
const REPORT_MS = 1000;

/** How a try to open the device ended. */
export type OpenOutcome = "opened" | "wrong" | "refused" | "cannot";

/** Who signs in again once the device is open: only what was typed or touched at the lock can do it. */
export type Renewal = () => Promise<Reply<SignedIn>>;

interface LockParts {
  readonly store: DeviceStore;
  readonly desk: SittingDesk;
  readonly talk: TabTalk;
  /** Goes on as the device that it was, once it is open. */
  readonly begin: (renewal: Renewal) => Promise<void>;
  readonly takeSeat: (asked: Promise<Reply<SignedIn>>, pin?: string) => Promise<SignInOutcome>;
  readonly sitting: () => Sitting | undefined;
  readonly tell: () => void;
}

/** The lock of this device as its people meet it: PIN, passkey, other windows, drafts, and the switch itself. */
export class DeviceLock {
  readonly #parts: LockParts;
  #progress: Progress | undefined;
  #reported = 0;

  constructor(parts: LockParts) {
    this.#parts = parts;
    parts.talk.hear((news) => this.#hear(news));
  }

  get kind(): "off" | "locked" | "open" {
    return this.#parts.store.lock.state.kind;
  }

  /** How far it is with turning on or off; undefined where it is not about that. */
  get progress(): Progress | undefined {
    return this.#parts.store.lock.isChanging ? (this.#progress ?? { done: 0, all: 0 }) : undefined;
  }

  /** How many people can open it, and how many passkeys. */
  get openers(): { readonly people: number; readonly passkeys: number } {
    const { wraps, passkeys } = this.#parts.store.lock;
    return { people: new Set(wraps.map(({ person }) => person)).size, passkeys: passkeys.length };
  }

  /** True where nobody has opened it: not here, and not in another window of this device. */
  async isShut(): Promise<boolean> {
    if (this.kind !== "locked") return false;
    await this.#borrow();
    return this.kind === "locked";
  }

  /** Once the device is open: what was written beside the lock, drafts, and a conversion that was stopped. */
  async settle(): Promise<void> {
    const { store } = this.#parts;
    await takeInBeside(store);
    if (this.kind === "open") await drafts.moveInto(store);
  }

  /** Goes on with a conversion that was stopped; does nothing where there is none. */
  async finish(): Promise<void> {
    const { store, tell } = this.#parts;
    if (this.kind !== "open") return;
    await store.lock.finish(this.#report);
    if (store.lock.state.kind === "off") await drafts.moveOut();
    tell();
  }

  async openWithPin(pin: string): Promise<OpenOutcome> {
    const { store, desk } = this.#parts;
    const opened = await store.lock.openWithPin(pin);
    if (opened === undefined) return "wrong";
    const sitting = opened.memo as Sitting;
    await this.#enter(sitting, () => desk.signIn({ name: sitting.person.name, pin, ...nameOf(sitting) }));
    return "opened";
  }

  /** Whether who is here could open it: asked before it is made to lock later. It is open already, and stays as it is. */
  async provePin(pin: string): Promise<OpenOutcome> {
    return (await this.#parts.store.lock.openWithPin(pin)) === undefined ? "wrong" : "opened";
  }

  /** The same, by a passkey. */
  async provePasskey(): Promise<OpenOutcome> {
    const { lock } = this.#parts.store;
    const outcome = await askPasskey(lock.passkeys);
    if (outcome.kind !== "answered") return outcome.kind;
    return (await lock.openWithPasskey(outcome.answer)) === undefined ? "wrong" : "opened";
  }

  async openWithPasskey(): Promise<OpenOutcome> {
    const { store, desk } = this.#parts;
    const challenge = await desk.passkeyChallenge();
    const outcome = await askPasskey(store.lock.passkeys, challenge);
    if (outcome.kind !== "answered") return outcome.kind;
    const opened = await store.lock.openWithPasskey(outcome.answer);
    if (opened === undefined) return "wrong";
    const sitting = opened.memo as Sitting;
    await this.#enter(sitting, () => desk.answerPasskey(outcome.answer, nameOf(sitting)));
    return "opened";
  }

  /** Locks what is kept here by this person's PIN, once the station has said that it is the right one. */
  async turnOn(pin: string): Promise<SignInOutcome> {
    const { store, desk, talk, takeSeat, sitting } = this.#parts;
    const before = this.#seated();
    const outcome = await takeSeat(desk.signIn({ name: before.person.name, pin, ...nameOf(before) }));
    if (outcome.kind !== "signed-in") return outcome;
    const memo = sitting() ?? before;
    await store.lock.turnOn({ person: memo.person.id, memo }, pin, this.#report);
    await drafts.moveInto(store);
    talk.tell({ kind: "session-changed" });
    this.#parts.tell();
    return outcome;
  }

  /** Unlocks for good. @returns false where the PIN opens nothing */
  async turnOff(pin: string): Promise<boolean> {
    const { store, talk } = this.#parts;
    if ((await store.lock.openWithPin(pin)) === undefined) return false;
    await store.lock.turnOff(this.#report);
    sealedCalls.forget();
    await drafts.moveOut();
    talk.tell({ kind: "session-changed" });
    this.#parts.tell();
    return true;
  }

  /** The station took this PIN of the person who sits here: from now on it opens the device. */
  async keepPin(pin: string): Promise<void> {
    if (this.kind !== "open") return;
    const memo = this.#seated();
    await this.#parts.store.lock.setPin({ person: memo.person.id, memo }, pin);
    this.#parts.tell();
  }

  /** A passkey of the person who sits here opens the device too, if it can derive secrets. */
  async addPasskey(): Promise<"added" | "refused" | "cannot" | "none"> {
    const { store, desk } = this.#parts;
    const own = await desk.ownPasskeys();
    const ids = own.kind === "answered" ? own.value.passkeys.map(({ id }) => id) : [];
    if (ids.length === 0) return "none";
    const salt = store.lock.makePasskeySalt();
    const outcome = await askPasskey(ids.map((credential) => ({ credential, salt })));
    if (outcome.kind !== "answered") return outcome.kind;
    return this.#keepPasskey(outcome.answer);
  }

  /** Who has left the station opens its devices no more, from the next time that one is opened. */
  async forgetLeavers(people: readonly Pick<Person, "id" | "left">[]): Promise<void> {
    const { lock } = this.#parts.store;
    const openers = new Set(lock.wraps.map(({ person }) => person));
    for (const { id, left } of people) if (left && openers.has(id)) await lock.removePerson(id);
  }

  /** Locks every window of this device. */
  lockNow(): void {
    this.#parts.talk.tell({ kind: "lock-now" });
    location.reload();
  }

  /** Nobody can open it any more: all that is locked goes. What was written beside the lock stays. */
  async startAnew(): Promise<void> {
    await this.#parts.store.erase();
    sealedCalls.forget();
    forgetPeople(localStorage);
    location.assign("/sign-in");
  }

  /** True where lines were written while the device was locked. */
  get hasBeside(): boolean {
    return localStorage.getItem(BESIDE_WRITTEN) !== null;
  }

  /** Not after each step: to draw the page anew takes longer than a step. */
  readonly #report: OnProgress = (progress) => {
    const now = performance.now();
    if (now - this.#reported < REPORT_MS) return;
    this.#reported = now;
    this.#progress = progress;
    this.#parts.tell();
  };

  async #keepPasskey(answer: PasskeyAnswer): Promise<"added"> {
    const memo = this.#seated();
    await this.#parts.store.lock.addPasskey({ person: memo.person.id, memo }, answer);
    this.#parts.tell();
    return "added";
  }

  async #enter(sitting: Sitting, renewal: Renewal): Promise<void> {
    const { store, begin, talk } = this.#parts;
    const held = await store.note<Sitting>("sitting");
    if (held?.person.id !== sitting.person.id) await store.putNote("sitting", sitting);
    sealedCalls.forget();
    await begin(renewal);
    talk.tell({ kind: "session-changed" });
  }

  #borrow(): Promise<void> {
    const { talk, store } = this.#parts;
    talk.tell({ kind: "key-wanted" });
    return new Promise((resolve) => {
      const end = () => {
        clearTimeout(timer);
        stop();
        resolve();
      };
      const timer = setTimeout(end, BORROW_MS);
      const stop = talk.hear((news) => {
        if (news.kind !== "key") return;
        store.lock.takeKey(news.key);
        end();
      });
    });
  }

  #hear(news: TabNews): void {
    const { store, talk } = this.#parts;
    const { key } = store.lock;
    if (news.kind === "key-wanted" && key !== undefined) talk.tell({ kind: "key", key });
    if (news.kind === "lock-now") {
      store.lock.dropKey();
      location.reload();
    }
  }

  #seated(): Sitting {
    const sitting = this.#parts.sitting();
    if (!sitting) throw new Error("Broken invariant: the lock changed while nobody is signed in");
    return sitting;
  }
}

function nameOf({ device, deviceName }: Sitting) {
  return { device, deviceName };
}
