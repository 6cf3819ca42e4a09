import type { StepReport } from "../state.ts";

/** Reports about a pattern's steps while lines are folded in, by the line that made them. */
export class ReportsDraft {
  readonly #reports: Map<string, StepReport>;
  #list: readonly StepReport[];

  constructor(before: readonly StepReport[]) {
    this.#list = before;
    this.#reports = new Map(before.map((report) => [report.entry, report]));
  }

  add(report: StepReport): void {
    this.#put(report);
  }

  answer(id: string, said: NonNullable<StepReport["answer"]>): void {
    const report = this.#reports.get(id);
    if (report) this.#put({ ...report, answer: said });
  }

  /** All of them, in order; the same list until one changes. */
  release(): readonly StepReport[] {
    if (this.#list.length === 0) this.#list = [...this.#reports.values()];
    return this.#list;
  }

  #put(report: StepReport): void {
    this.#reports.set(report.entry, report);
    this.#list = [];
  }
}
