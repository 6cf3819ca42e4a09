import type { Column, LinearModel, Row, Terms } from "./linear-solver.ts";

/** Collects columns and rows of a model, and the value that a known plan gives each column. */
export class ModelRows {
  readonly columns: Column[] = [];
  readonly rows: Row[] = [];
  readonly start: number[] = [];

  /** @returns the new column's number */
  column(value: number, upper: number, isWhole: boolean, lower = 0): number {
    this.start.push(value);
    return this.columns.push({ lower, upper, isWhole }) - 1;
  }

  atLeast(lower: number, terms: Terms): void {
    this.rows.push({ terms, lower, upper: Number.POSITIVE_INFINITY });
  }

  atMost(upper: number, terms: Terms): void {
    this.rows.push({ terms, lower: Number.NEGATIVE_INFINITY, upper });
  }

  model(cost: Terms): LinearModel {
    return { columns: this.columns, rows: this.rows, cost };
  }
}
