import { createHash, generateKeyPairSync, randomBytes, sign, type KeyObject } from "node:crypto";

/** A passkey in software, for tests: answers challenges as a phone would. */
export class SoftwarePasskey {
  readonly #origin: string;
  readonly #id = randomBytes(16);
  readonly #keys: { readonly publicKey: KeyObject; readonly privateKey: KeyObject };
  #counter = 0;

  constructor(origin: string) {
    this.#origin = origin;
    this.#keys = generateKeyPairSync("ec", { namedCurve: "P-256" });
  }

  /** What `startRegistration` of the browser would return. */
  register(challenge: string): Record<string, unknown> & { id: string } {
    const data = Buffer.concat([
      this.#state(0x45),
      Buffer.alloc(16),
      Buffer.from([0, this.#id.length]),
      this.#id,
      this.#cose(),
    ]);
    const attestation = cborMap([
      [cborText("fmt"), cborText("none")],
      [cborText("attStmt"), cborMap([])],
      [cborText("authData"), cborBytes(data)],
    ]);
    const clientDataJSON = this.#client("webauthn.create", challenge).toString("base64url");
    return this.#envelope({
      clientDataJSON,
      attestationObject: attestation.toString("base64url"),
      transports: ["internal"],
    });
  }

  /** What `startAuthentication` of the browser would return. */
  signIn(challenge: string): Record<string, unknown> & { id: string } {
    const state = this.#state(0x05);
    const client = this.#client("webauthn.get", challenge);
    const signed = Buffer.concat([state, createHash("sha256").update(client).digest()]);
    return this.#envelope({
      clientDataJSON: client.toString("base64url"),
      authenticatorData: state.toString("base64url"),
      signature: sign("sha256", signed, this.#keys.privateKey).toString("base64url"),
    });
  }

  /** Sets the counter back, as on a copy of the passkey. */
  turnBack(): void {
    this.#counter = 0;
  }

  #envelope(response: Record<string, unknown>): Record<string, unknown> & { id: string } {
    const id = this.#id.toString("base64url");
    return { id, rawId: id, type: "public-key", clientExtensionResults: {}, response };
  }

  #client(type: string, challenge: string): Buffer {
    return Buffer.from(JSON.stringify({ type, challenge, origin: this.#origin, crossOrigin: false }));
  }

  /** Hash of the site's name, what the person did, and the counter. */
  #state(flags: number): Buffer {
    const counter = Buffer.alloc(4);
    counter.writeUInt32BE((this.#counter += 1));
    return Buffer.concat([
      createHash("sha256").update(new URL(this.#origin).hostname).digest(),
      Buffer.from([flags]),
      counter,
    ]);
  }

  /** The public key for ES256 on P-256 in COSE form. */
  #cose(): Buffer {
    const { x, y } = this.#keys.publicKey.export({ format: "jwk" });
    return cborMap([
      [Buffer.from([0x01]), Buffer.from([0x02])],
      [Buffer.from([0x03]), Buffer.from([0x26])],
      [Buffer.from([0x20]), Buffer.from([0x01])],
      [Buffer.from([0x21]), cborBytes(Buffer.from(x!, "base64url"))],
      [Buffer.from([0x22]), cborBytes(Buffer.from(y!, "base64url"))],
    ]);
  }
}

function cborMap(entries: readonly (readonly [Buffer, Buffer])[]): Buffer {
  return Buffer.concat([Buffer.from([0xa0 + entries.length]), ...entries.flat()]);
}

function cborText(text: string): Buffer {
  return Buffer.concat([Buffer.from([0x60 + text.length]), Buffer.from(text)]);
}

function cborBytes(bytes: Buffer): Buffer {
  return Buffer.concat([Buffer.from([0x58, bytes.length]), bytes]);
}
