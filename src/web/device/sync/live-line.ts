import { LIVE_EVENTS, type LiveChains } from "#station";

/** A line this long without news is opened anew [ms]: a network can drop one without either end hearing of it. */
const RENEW_MS = 10 * 60_000;

/**
 * The server's live line: tells how far its log goes, at once and after each change. Only a hint to look; what is fetched never
 * depends on it, so a line that drops costs seconds, not entries.
 */
export class LiveLine {
  readonly #onNews: (chains?: LiveChains) => void;
  #source: EventSource | undefined;
  #hasSpoken = false;
  #renewal: ReturnType<typeof setTimeout> | undefined;

  constructor(onNews: (chains?: LiveChains) => void) {
    this.#onNews = onNews;
  }

  get isOpen(): boolean {
    return this.#source !== undefined;
  }

  open(): void {
    if (this.#source !== undefined) return;
    const source = new EventSource("/api/log/live");
    this.#source = source;
    source.addEventListener(LIVE_EVENTS.chains, (event: MessageEvent<string>) => this.#heard(event.data));
    source.addEventListener(LIVE_EVENTS.signedOut, () => {
      this.close();
      this.#onNews();
    });
    source.addEventListener("error", () => this.#broken());
    this.#listen();
  }

  close(): void {
    clearTimeout(this.#renewal);
    this.#source?.close();
    this.#source = undefined;
    this.#hasSpoken = false;
  }

  /** A line that spoke and broke is news: the station may be gone. One that never spoke is not, or looks would chase it. */
  #broken(): void {
    const hadSpoken = this.#hasSpoken;
    this.close();
    if (hadSpoken) this.#onNews();
  }

  #heard(chains: string): void {
    this.#hasSpoken = true;
    this.#listen();
    this.#onNews(JSON.parse(chains) as LiveChains);
  }

  #listen(): void {
    clearTimeout(this.#renewal);
    this.#renewal = setTimeout(() => this.close(), RENEW_MS);
  }
}
