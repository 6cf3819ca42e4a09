import type { LinearModel, LinearSolver, Solved, SolveLimits } from "#planning";
import type { Highs } from "highs";

/**
 * The mixed-integer solver HiGHS, from its own package; 3.5 MB that are loaded here and nowhere before.
 * @returns a solver that blocks the thread it is called on
 */
export async function loadSolver(): Promise<LinearSolver> {
  const { default: load } = await import("highs");
  const highs = await load();
  return { solve: (model, limits) => solveWith(highs, model, limits) };
}

function solveWith(highs: Highs, model: LinearModel, limits: SolveLimits): Solved {
  const began = performance.now();
  const solved = highs.withModel(modelData(highs, model), (held) => {
    held.options.set({
      output_flag: false,
      random_seed: 0,
      time_limit: limits.seconds,
      mip_abs_gap: limits.gap,
      mip_rel_gap: 0,
    });
    held.setSolution({ colValue: Float64Array.from(limits.start) });
    held.run();
    const { feasible } = highs.constants.solutionStatus;
    const values = held.info.get("primal_solution_status") === feasible ? [...held.getSolution().colValue] : undefined;
    return { values, bound: Number(held.info.get("mip_dual_bound")) };
  });
  return { ...solved, seconds: (performance.now() - began) / 1000 };
}

function modelData(highs: Highs, { columns, rows, cost }: LinearModel) {
  const costs = new Float64Array(columns.length);
  for (const [column, coefficient] of mergedTerms(cost)) costs[column] = coefficient;
  const finite = (value: number) => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
  const lines = rows.map((row) => mergedTerms(row.terms));
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: costs,
    colLower: Float64Array.from(columns, (one) => finite(one.lower)),
    colUpper: Float64Array.from(columns, (one) => finite(one.upper)),
    rowLower: Float64Array.from(rows, (one) => finite(one.lower)),
    rowUpper: Float64Array.from(rows, (one) => finite(one.upper)),
    integrality: Int32Array.from(columns, (one) => (one.isWhole ? 1 : 0)),
    matrix: { format: "csr" as const, numRows: rows.length, numCols: columns.length, ...rowMatrix(lines) },
  };
}

/** A column named twice counts with the sum. */
function mergedTerms(terms: LinearModel["cost"]): (readonly [number, number])[] {
  const merged = new Map<number, number>();
  for (const [column, coefficient] of terms) merged.set(column, (merged.get(column) ?? 0) + coefficient);
  return [...merged];
}

function rowMatrix(lines: readonly (readonly (readonly [number, number])[])[]) {
  const starts = new Int32Array(lines.length + 1);
  let end = 0;
  for (const [index, line] of lines.entries()) {
    end += line.length;
    starts[index + 1] = end;
  }
  const flat = lines.flat();
  return {
    starts,
    indices: Int32Array.from(flat, ([column]) => column),
    values: Float64Array.from(flat, ([, coefficient]) => coefficient),
  };
}
