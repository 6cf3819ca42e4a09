import { uuidv7 } from "uuidv7";
import { InputError } from "#base";
import type { Entry } from "#log";
import type { Answer, Bodies, DateRead, EntryKind, KitState, PhotoRef, Remedy, Value } from "#readiness";
import * as station from "#station";
import { doingOf } from "../device/act.ts";
import { deviceAmbient } from "../device/clock.ts";
import type { Recorder, StationView } from "../device/sync/contract.ts";
import type { PickedMode } from "./finding-choice.ts";
import type { Ask } from "./lines.ts";

/** What is given with an answer, beside the answer itself. */
export interface AnswerDetails {
  readonly why?: string;
  readonly value?: Value;
  readonly note?: string;
  readonly photos?: readonly PhotoRef[];
  readonly fromCard?: boolean;
  /** When the card was filled in. */
  readonly cardAt?: string;
}

/** What a person adds to a finding. */
export interface FindingDetails {
  readonly note?: string;
  readonly photos: readonly PhotoRef[];
}

/** One line of a turnaround, as acts name it. */
export interface Where {
  readonly turnaround: string;
  readonly step: string;
}

/** Writes an act down, or throws what speaks against it as an InputError. */
export function perform<Kind extends EntryKind>(recorder: Recorder, act: station.Act<Kind>): Promise<Entry> {
  if (act.kind === "refused") return Promise.reject(new InputError(act.because));
  return recorder.record(act.draft);
}

/** What people do to one kit. Every act is on this device's disk when it resolves; a refused one throws why. */
export class KitActs {
  readonly #recorder: Recorder;
  readonly #view: StationView;
  readonly #kit: KitState;

  constructor(recorder: Recorder, view: StationView, kit: KitState) {
    this.#recorder = recorder;
    this.#view = view;
    this.#kit = kit;
  }

  open(body: Omit<Bodies["turnaround-opened"], "turnaround">): Promise<Entry> {
    return this.#do(station.openTurnaround, { turnaround: uuidv7(), ...body });
  }

  answer(where: Where, ask: Pick<Ask, "check">, answer: Answer, details: AnswerDetails = {}): Promise<Entry> {
    const check = ask.check ? { check: ask.check.id } : {};
    return this.#do(station.answerStep, { ...where, ...check, answer, ...details });
  }

  startTimer(where: Where): Promise<Entry> {
    return this.#do(station.startTimer, where);
  }

  stopTimer(where: Where, clock: { started: string; seconds: number; reached: boolean }): Promise<Entry> {
    return this.#do(station.stopTimer, { ...where, ...clock });
  }

  countPulls(where: Where, pulls: number, outcome: "started" | "not-yet"): Promise<Entry> {
    return this.#do(station.countPulls, { ...where, pulls, started: outcome === "started" });
  }

  timePrime(where: Where, prime: Omit<Bodies["prime-timed"], keyof Where>): Promise<Entry> {
    return this.#do(station.timePrime, { ...where, ...prime });
  }

  measureDelivery(where: Where, measured: Omit<Bodies["delivery-measured"], keyof Where>): Promise<Entry> {
    return this.#do(station.measureDelivery, { ...where, ...measured });
  }

  fit(where: Where, fitted: Omit<Bodies["item-fitted"], keyof Where>): Promise<Entry> {
    return this.#do(station.fitItem, { ...where, ...fitted });
  }

  readDate(where: Partial<Where>, read: DateRead): Promise<Entry> {
    return this.#do(station.readDate, { ...where, ...read });
  }

  raise(where: Partial<Where>, check: string | undefined, mode: PickedMode, details: FindingDetails): Promise<Entry> {
    const at = check === undefined ? where : { ...where, check };
    return this.#do(station.raiseFinding, { finding: uuidv7(), ...at, ...mode, ...details });
  }

  remedy(remedy: Remedy): Promise<Entry> {
    return remedy.how === "lived-with" ? this.#do(station.liveWith, remedy) : this.#do(station.makeRemedy, remedy);
  }

  prove(proof: Bodies["finding-proved"]): Promise<Entry> {
    return this.#do(station.proveFinding, proof);
  }

  nameSecond(body: Bodies["second-named"]): Promise<Entry> {
    return this.#do(station.nameSecond, body);
  }

  goOnAlone(body: Bodies["gone-on-alone"]): Promise<Entry> {
    return this.#do(station.goOnAlone, body);
  }

  seal(body: Bodies["sealed"]): Promise<Entry> {
    return this.#do(station.sealKit, body);
  }

  closeGrounded(body: Bodies["closed-grounded"]): Promise<Entry> {
    return this.#do(station.closeGrounded, body);
  }

  settle(entries: readonly string[], stands: string, reason: string): Promise<Entry> {
    return this.#do(station.settleDifference, { entries, stands, reason });
  }

  report(pattern: string, body: Bodies["step-reported"]): Promise<Entry> {
    return perform(this.#recorder, station.reportStep(this.#view, pattern, body));
  }

  /** The clock is read at the act: a wait that ran out on the screen is over. */
  /** The station as it stands now: one act may follow another before anything is drawn anew. */
  #now(): StationView {
    return this.#recorder.station() ?? this.#view;
  }

  #do<Kind extends EntryKind, Body>(
    act: (doing: station.ActContext, kit: KitState, body: Body) => station.Act<Kind>,
    body: Body,
  ): Promise<Entry> {
    const view = this.#now();
    const kit = view.kits.find(({ id }) => id === this.#kit.id) ?? this.#kit;
    return perform(this.#recorder, act({ ...doingOf(view), now: deviceAmbient.now() }, kit, body));
  }
}
