/** A graph as numbers: what each node names, of those there are. */
export interface Named {
  readonly size: number;
  names(node: number): readonly number[];
}

/**
 * Nodes that lead back to themselves together, every other one alone; what is named comes before what names it.
 *
 * @source Tarjan, Depth-first search and linear graph algorithms, SIAM J. Comput. 1 (1972) | FROM MEMORY; without recursion
 * @example componentsOf({ size: 2, names: (node) => (node === 1 ? [0] : []) }) // [[0], [1]]
 */
export function componentsOf(graph: Named): readonly (readonly number[])[] {
  const walk = new Walk(graph);
  for (let node = 0; node < graph.size; node++) walk.from(node);
  return walk.found;
}

class Walk {
  readonly found: (readonly number[])[] = [];
  readonly #graph: Named;
  /** Order of the first visit from 1; 0 for not yet. */
  readonly #visit: Uint32Array;
  /** The earliest visit that is reached and not yet in a component. */
  readonly #low: Uint32Array;
  readonly #isOpen: Uint8Array;
  readonly #open: number[] = [];
  #visits = 0;

  constructor(graph: Named) {
    this.#graph = graph;
    this.#visit = new Uint32Array(graph.size);
    this.#low = new Uint32Array(graph.size);
    this.#isOpen = new Uint8Array(graph.size);
  }

  from(start: number): void {
    if (this.#visit[start] !== 0) return;
    const path = [this.#enter(start)];
    for (let step = path.at(-1); step !== undefined; step = path.at(-1)) {
      const name = step.names[step.next++];
      if (name === undefined) this.#leave(path);
      else if (this.#visit[name] === 0) path.push(this.#enter(name));
      else if (this.#isOpen[name] === 1) this.#lower(step.node, this.#visit[name]!);
    }
  }

  #enter(node: number): { readonly node: number; readonly names: readonly number[]; next: number } {
    this.#visit[node] = this.#low[node] = ++this.#visits;
    this.#isOpen[node] = 1;
    this.#open.push(node);
    return { node, names: this.#graph.names(node), next: 0 };
  }

  #leave(path: { readonly node: number }[]): void {
    const { node } = path.pop()!;
    const above = path.at(-1);
    if (above) this.#lower(above.node, this.#low[node]!);
    if (this.#low[node] !== this.#visit[node]) return;
    const members = this.#open.splice(this.#open.lastIndexOf(node));
    for (const member of members) this.#isOpen[member] = 0;
    this.found.push(members);
  }

  #lower(node: number, visit: number): void {
    if (visit < this.#low[node]!) this.#low[node] = visit;
  }
}
