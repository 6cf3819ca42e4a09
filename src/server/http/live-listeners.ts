import { LIVE_EVENTS, type LiveChains } from "#station";
import type { FastifyReply, FastifyRequest } from "fastify";
import { callerOf } from "./gate.ts";
import type { Parts } from "../parts.ts";
import { findAsking } from "../sign-in/sessions.ts";

/** A device that takes in nothing may leave so much unsent [byte] before it is let go; it will connect again. */
const UNSENT_BYTES = 256 * 1024;

/** So many streams of one device at once, for its open tabs; one more ends the oldest. */
const STREAMS_OF_DEVICE = 12;

/** One open device. */
interface Listener {
  readonly device: string;
  readonly request: FastifyRequest;
  readonly reply: FastifyReply;
}

/** Every device that listens to this server process, and what they were last told. */
export class LiveListeners {
  readonly #parts: Parts;
  readonly #open = new Set<Listener>();
  #told = "";

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  /** Lets a device listen from now on, and tells it how things stand. */
  async add(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const chains = await this.#readChains();
    const listener = openStream(request, reply);
    this.#makeRoom(listener.device);
    this.#open.add(listener);
    reply.raw.on("close", () => this.#open.delete(listener));
    sendChains(listener, chains);
  }

  /** Tells every device, where something has changed since they were last told. */
  async tell(): Promise<void> {
    if (this.#open.size === 0) return;
    const chains = await this.#readChains();
    const said = JSON.stringify(chains);
    if (said === this.#told) return;
    await this.#dismiss();
    this.#told = said;
    for (const listener of this.#open) sendChains(listener, chains);
  }

  /** Shows every device that the line still stands. */
  async beat(): Promise<void> {
    await this.#dismiss();
    for (const listener of this.#open) write(listener, ": still here\n\n");
  }

  close(): void {
    for (const { reply } of this.#open) reply.raw.end();
  }

  #makeRoom(device: string): void {
    const held = [...this.#open].filter((listener) => listener.device === device);
    for (const listener of held.slice(0, Math.max(0, held.length + 1 - STREAMS_OF_DEVICE))) {
      this.#open.delete(listener);
      listener.reply.raw.end();
    }
  }

  /** Ends the streams of those who were signed out or shut out since they opened. */
  async #dismiss(): Promise<void> {
    for (const listener of this.#open) {
      const asking = await findAsking(this.#parts, listener.request);
      if (asking.kind === "caller") continue;
      this.#open.delete(listener);
      send(listener, LIVE_EVENTS.signedOut, { because: asking.because });
      listener.reply.raw.end();
    }
  }

  async #readChains(): Promise<LiveChains> {
    const { epoch } = await this.#parts.epochs.now();
    const heads = (await this.#parts.store.heads()).map(({ place, seq, hash }) => [place, { seq, hash }]);
    return { epoch, heads: Object.fromEntries(heads) as LiveChains["heads"] };
  }
}

function openStream(request: FastifyRequest, reply: FastifyReply): Listener {
  reply.hijack();
  for (const [name, value] of Object.entries(reply.getHeaders()))
    if (value !== undefined) reply.raw.setHeader(name, value);
  reply.raw.writeHead(200, {
    "content-type": "text/event-stream; charset=utf-8",
    "cache-control": "no-store",
    "x-accel-buffering": "no",
  });
  return { device: callerOf(request).device, request, reply };
}

/** In numbers alone too, for devices of before; the chains come last, and say all. */
function sendChains(listener: Listener, chains: LiveChains): void {
  const numbers = Object.entries(chains.heads).map(([place, { seq }]) => [place, seq] as const);
  send(listener, LIVE_EVENTS.heads, Object.fromEntries(numbers));
  send(listener, LIVE_EVENTS.chains, chains);
}

function send(listener: Listener, event: string, data: unknown): void {
  write(listener, `event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
}

function write({ reply }: Listener, text: string): void {
  if (reply.raw.writableLength > UNSENT_BYTES) reply.raw.destroy();
  else reply.raw.write(text);
}
