import { isStoreError } from "#station";
import type { FastifyInstance } from "fastify";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from "prom-client";

/** Upper ends of the classes of waiting [s]: a pull, a push, a flood computed, a photo over a poor line. */
const SECONDS = [0.005, 0.025, 0.1, 0.25, 0.5, 1, 2.5, 10, 60];

/** Counts what the server does, in the open text format for metrics. Names no person, device, kit or place. */
export class Metrics {
  readonly #registry = new Registry();
  readonly #requests: Histogram<"method" | "route" | "status">;
  readonly #refused: Counter<"code">;

  /** @param probe - the count of lines, as the health of the server tells it */
  constructor(probe: () => Promise<number>) {
    const registers = [this.#registry];
    collectDefaultMetrics({ register: this.#registry });
    this.#requests = new Histogram({
      name: "drykeel_request_seconds",
      help: "Time from a request's headers to the end of its answer.",
      labelNames: ["method", "route", "status"],
      buckets: SECONDS,
      registers,
    });
    this.#refused = new Counter({
      name: "drykeel_store_faults_total",
      help: "Requests refused because disk or database could not be worked with, by error code.",
      labelNames: ["code"],
      registers,
    });
    addLogGauges(registers, probe);
  }

  /** Counts every request of an application from now on. */
  watch(app: FastifyInstance): void {
    app.addHook("onResponse", async (request, reply) => {
      const { method, routeOptions } = request;
      const route = routeOptions.url ?? "none";
      this.#requests.observe({ method, route, status: reply.statusCode }, reply.elapsedTime / 1000);
    });
    app.addHook("onError", async (_request, _reply, error: unknown) => {
      if (isStoreError(error)) this.#refused.inc({ code: error.code });
    });
  }

  /** Everything counted, as text. */
  write(): Promise<string> {
    return this.#registry.metrics();
  }

  get contentType(): string {
    return this.#registry.contentType;
  }
}

/** Each asks for itself, since all are collected at once; the probe asks the store only once. */
function addLogGauges(registers: Registry[], probe: () => Promise<number>): void {
  const lines: Gauge = new Gauge({
    name: "drykeel_log_lines",
    help: "Lines in the log; not a number while the store does not answer.",
    registers,
    collect: async () => lines.set(await probe().catch(() => Number.NaN)),
  });
  const up: Gauge = new Gauge({
    name: "drykeel_store_up",
    help: "1 where the store answers, 0 where it does not.",
    registers,
    collect: () =>
      probe().then(
        () => up.set(1),
        () => up.set(0),
      ),
  });
}

/** Where metrics are told: a listener of its own, since whoever reaches it signs in to nothing. */
export interface MetricsAddress {
  readonly host: string;
  readonly port: number;
}

/**
 * Serves `/metrics` until it is stopped.
 *
 * @param metrics - what was counted
 * @param address - to listen on
 * @returns the port taken, and what stops it
 */
export async function serveMetrics(
  metrics: Metrics,
  { host, port }: MetricsAddress,
): Promise<{ readonly port: number; stop(): Promise<void> }> {
  const server = createServer((request, response) => {
    const isAsked = request.method === "GET" && request.url === "/metrics";
    if (!isAsked) return void response.writeHead(404).end();
    metrics.write().then(
      (text) => response.writeHead(200, { "content-type": metrics.contentType }).end(text),
      () => response.writeHead(500).end(),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen({ host, port }, resolve);
  });
  return { port: (server.address() as AddressInfo).port, stop: () => stop(server) };
}

function stop(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(() => resolve()));
}
