import { hashSecret, type Ambient, type Credential, type SecretStore } from "#station";
import { randomBytes } from "node:crypto";

/** What a link opens: the wall of a place, or the calendar of a person. */
export type LinkTo = "wall" | "calendar";

/** So many links to one thing at once: one that is lost is withdrawn, not forgotten. */
const MOST = 10;
const SECRET_BYTES = 32;
const SECRET = /^[\w-]{43}$/;

/**
 * Links that show one thing without a sign-in. The secret has 256 bits, is shown once, and only its hash is kept; a
 * link that was withdrawn opens nothing from then on.
 */
export class LinkDesk {
  readonly #secrets: SecretStore;
  readonly #ambient: Pick<Ambient, "now">;

  constructor(secrets: SecretStore, ambient: Pick<Ambient, "now">) {
    this.#secrets = secrets;
    this.#ambient = ambient;
  }

  /** @returns the secret of a new link, or undefined where there are too many already */
  async make(to: LinkTo, of: string): Promise<{ readonly id: string; readonly secret: string } | undefined> {
    if ((await this.of(to, of)).length >= MOST) return undefined;
    const secret = randomBytes(SECRET_BYTES).toString("base64url");
    const id = idOf(to, secret);
    const created = this.#ambient.now();
    await this.#secrets.putCredential({ id, person: `${to}:${of}`, kind: "link", secret: "", counter: 0, created });
    return { id, secret };
  }

  /** Links that open a thing now, oldest first. */
  async of(to: LinkTo, of: string): Promise<readonly Credential[]> {
    const all = await this.#secrets.credentialsOf(`${to}:${of}`);
    return all.filter(({ kind }) => kind === "link").toSorted((one, other) => (one.created < other.created ? -1 : 1));
  }

  /** Whose wall or calendar a secret opens; undefined for one that was never given, or was withdrawn. */
  async opens(to: LinkTo, secret: string): Promise<string | undefined> {
    if (!SECRET.test(secret)) return undefined;
    const held = await this.#secrets.credential(idOf(to, secret));
    return held?.kind === "link" && held.person.startsWith(`${to}:`) ? held.person.slice(to.length + 1) : undefined;
  }

  /** @returns false where there is no such link to this thing */
  async withdraw(to: LinkTo, of: string, id: string): Promise<boolean> {
    const held = (await this.of(to, of)).some((one) => one.id === id);
    if (held) await this.#secrets.removeCredential(id);
    return held;
  }
}

/** One made for one purpose opens no other. */
function idOf(to: LinkTo, secret: string): string {
  return `link-${hashSecret(to, secret)}`;
}
