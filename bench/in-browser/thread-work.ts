import type { Browser, Page } from "playwright-core";

/** One task of a thread [ms]: on the clock, and of processor time, which a busy machine does not stretch. */
export interface Task {
  readonly wall: number;
  readonly worked: number;
}

/** What the browser's own trace says its threads did. */
export interface Work {
  /** The task of the page's own thread that held the screen longest, by its processor time. */
  readonly longest: Task;
  /** Tasks of the page's own thread, the heaviest first. */
  readonly page: readonly Task[];
  /** Tasks of the workers, the heaviest first. */
  readonly worker: readonly Task[];
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** [µs], on the clock and of processor time. */
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Does something with the page while the browser notes every task of its threads. */
export async function traceWork<Result>(
  browser: Browser,
  page: Page,
  act: () => Promise<Result>,
): Promise<{ readonly result: Result; readonly work: Work }> {
  await browser.startTracing(page, { categories: ["toplevel"] });
  const result = await act();
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { readonly traceEvents: readonly TraceEvent[] };
  return { result, work: workOf(trace.traceEvents) };
}

function workOf(events: readonly TraceEvent[]): Work {
  const names = new Map(
    events.filter(({ name }) => name === "thread_name").map((event) => [threadOf(event), event.args?.name]),
  );
  const tasksOf = (thread: string): Task[] =>
    events
      .filter((event) => event.ph === "X" && event.name.endsWith("RunTask") && names.get(threadOf(event)) === thread)
      .map(({ dur = 0, tdur = dur }) => ({ wall: dur / 1000, worked: tdur / 1000 }))
      .sort((one, other) => other.worked - one.worked);
  const page = tasksOf("CrRendererMain");
  const [longest] = page;
  if (longest === undefined) throw new Error("The trace has no task of the page's thread.");
  return { longest, page, worker: tasksOf("DedicatedWorker thread") };
}

const threadOf = ({ pid, tid }: TraceEvent): string => `${pid}/${tid}`;
