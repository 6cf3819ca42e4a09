/** What a server is asked by a device that stays open. */
export interface Asked {
  /** Address of the event stream. */
  readonly live: string;
  readonly headers: Record<string, string>;
  /** Whether an event says that there may be something new, and from the first on, where the device stands. */
  onEvent(event: string, data: unknown): boolean;
  /** Fetches what is new; @returns the ids that came, and whether there is more. */
  pull(): Promise<{ readonly ids: readonly string[]; readonly more: boolean }>;
}

/** A device that holds an event stream and pulls when it is told, one pull at a time, as the app does. */
export class OpenDevice {
  readonly #end = new AbortController();
  readonly #asked: Asked;
  readonly #seen: (id: string) => void;
  #pulling = false;
  #again = false;
  #fault: unknown;

  private constructor(asked: Asked, seen: (id: string) => void) {
    [this.#asked, this.#seen] = [asked, seen];
  }

  /** Opens the stream and waits for its first event. */
  static async open(asked: Asked, seen: (id: string) => void): Promise<OpenDevice> {
    const device = new OpenDevice(asked, seen);
    await new Promise<void>((resolve, reject) => {
      device.#listen(resolve).catch((cause: unknown) => {
        if (!device.#end.signal.aborted) device.#fault ??= cause;
        reject(cause as Error);
      });
    });
    return device;
  }

  /** Ends the stream. @throws what went wrong on the way */
  close(): void {
    this.#end.abort();
    if (this.#fault !== undefined) throw this.#fault;
  }

  async #listen(opened: () => void): Promise<void> {
    const { live, headers } = this.#asked;
    const reply = await fetch(live, { headers, signal: this.#end.signal });
    if (!reply.ok || !reply.body) throw new Error(`${live}: ${reply.status}`);
    let text = "";
    for await (const chunk of reply.body.pipeThrough(new TextDecoderStream())) {
      const parts = (text + chunk).split("\n\n");
      text = parts.pop()!;
      for (const part of parts) if (this.#hears(part)) void this.#pull();
      opened();
    }
    throw new Error(`${live} ended`);
  }

  #hears(part: string): boolean {
    const event = /^event: (.*)$/m.exec(part)?.[1];
    const data = /^data: (.*)$/m.exec(part)?.[1];
    return event !== undefined && data !== undefined && this.#asked.onEvent(event, JSON.parse(data));
  }

  async #pull(): Promise<void> {
    if (this.#pulling) this.#again = true;
    else await this.#pullAll().catch((cause: unknown) => (this.#fault ??= cause));
  }

  async #pullAll(): Promise<void> {
    this.#pulling = true;
    do {
      this.#again = false;
      const { ids, more } = await this.#asked.pull();
      ids.forEach((id) => this.#seen(id));
      this.#again ||= more;
    } while (this.#again);
    this.#pulling = false;
  }
}
