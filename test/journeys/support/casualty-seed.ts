import type { Bodies, EntryKind } from "#readiness";
import type { Page } from "playwright-core";
import { uuidv7 } from "uuidv7";
import { exportedLines } from "./kits.ts";
import type { RunningStation } from "./station.ts";

/** A line of a casualty, and how long before now on the page's own clock it was written [min]. */
export type SeededLine = {
  readonly [Kind in EntryKind]: { readonly ago: number; readonly kind: Kind; readonly body: Bodies[Kind] };
}[EntryKind];

const SPACE = { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const BOAT = { kind: "motor boat", length: 9 } as const;

/** A sheet opened so long ago, for a motor boat of 9 m with water in her engine room. */
export function opened(
  ago: number,
  name = "Grey motor boat",
  boat: Bodies["casualty-opened"]["boat"] = BOAT,
): SeededLine {
  return { ago, kind: "casualty-opened", body: { name, boat, space: SPACE } };
}

/** A sounding of her engine room. */
export function sounded(ago: number, centimetres: number): SeededLine {
  const text = `${centimetres}\u00a0cm`;
  return { ago, kind: "sounding-taken", body: { space: SPACE.id, level: centimetres / 100, text } };
}

/** A pump of hers set going or stopped; the kit's own id where it is a kit. */
export function pumped(ago: number, litres: number, more: Partial<Bodies["pump-set"]> = {}): SeededLine {
  const pump = { pump: "p1", name: "Pump 1", space: SPACE.id, running: true, flow: litres / 60_000 };
  return { ago, kind: "pump-set", body: { ...pump, ...more } };
}

/** What was seen of her. */
export function seen(ago: number, body: Bodies["stability-seen"]): SeededLine {
  return { ago, kind: "stability-seen", body };
}

/**
 * Writes a casualty to the station as the person signed in on this page would have, and waits until the page has it.
 *
 * @param page - signed in, with a network
 * @returns the id of the casualty
 */
export async function seedCasualty(page: Page, station: RunningStation, lines: readonly SeededLine[]): Promise<string> {
  const id = uuidv7();
  const made = lines.map((line) => ({ ...line, id: uuidv7(), subject: `casualty:${id}` }));
  await send(page, made);
  await page.goto(`${station.url}/casualty`);
  await page.locator(`a[href^="/casualty/${id}"]`).waitFor();
  return id;
}

/** Closes every casualty that is open, so that none of another scene calls in the next. */
export async function closeAll(page: Page): Promise<void> {
  const lines = await exportedLines(page);
  const closed = new Set(lines.filter(({ kind }) => kind === "casualty-closed").map(({ subject }) => subject));
  const open = lines.filter(({ kind, subject }) => kind === "casualty-opened" && !closed.has(subject));
  const body = { outcome: "stood-down" };
  await send(
    page,
    open.map(({ subject }) => ({ id: uuidv7(), ago: 0, kind: "casualty-closed", subject, body })),
  );
}

/** Writes lines about anything to the station, as the person signed in on this page would have. */
export async function seedLines(page: Page, lines: readonly PlacedLine[]): Promise<void> {
  await send(
    page,
    lines.map((line) => ({ ...line, id: uuidv7(), ago: 0 })),
  );
}

export interface PlacedLine {
  readonly place: string;
  readonly subject: string;
  readonly kind: EntryKind;
  readonly body: object;
}

async function send(page: Page, made: readonly object[]): Promise<void> {
  const verdicts = await page.evaluate(push, JSON.stringify(made));
  if (verdicts.some((verdict) => verdict !== "accepted")) throw new Error(`Not seeded: ${verdicts.join(", ")}`);
}

/** In the page: sends the lines under its own session and by its own clock. */
async function push(text: string): Promise<readonly string[]> {
  const made = JSON.parse(text) as readonly { readonly ago: number }[];
  const session = (await (await fetch("/api/session")).json()) as Session;
  const entries = made.map(({ ago, ...line }) => ({
    place: "station",
    ...line,
    at: new Date(Date.now() - 60_000 * ago).toISOString(),
    by: session.person.id,
    device: session.device,
  }));
  const headers = { "content-type": "application/json" };
  const reply = await fetch("/api/log/push", { method: "POST", headers, body: JSON.stringify({ entries }) });
  const { verdicts } = (await reply.json()) as { readonly verdicts: readonly { readonly verdict: string }[] };
  return verdicts.map((one) => (one.verdict === "accepted" ? one.verdict : JSON.stringify(one)));
}

interface Session {
  readonly person: { readonly id: string };
  readonly device: string;
}
