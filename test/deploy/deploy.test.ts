import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join, normalize } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { LOST_EXIT_CODE } from "#src/server/start/opening-lines.ts";
import { readSettings, USAGE } from "#src/server/start/settings.ts";
import { stageStation } from "#src/server/start/staged-station.ts";

const root = join(import.meta.dirname, "..", "..");
const read = (...path: string[]) => readFileSync(join(root, ...path), "utf8");
const isThere = (...path: string[]) => existsSync(join(root, ...path));
const { engines } = JSON.parse(read("package.json")) as { engines: { node: string } };
/** What a setting is called in the list that `npm start -- --help` prints. */
const KNOWN = new Set([...USAGE.matchAll(/^ {2}([A-Z_]+)/gm)].map((match) => match[1]!));
/** Read by Node's own packages, not by us. */
const NOT_OURS = ["NODE_ENV"];
const DEFAULT_PORT = readSettings({}, []).port;

/** `NAME=value` pairs of a line. */
function pairsIn(text: string): Record<string, string> {
  return Object.fromEntries([...text.matchAll(/([A-Z_]+)=(\S+)/g)].map((match) => [match[1]!, match[2]!]));
}

function unknownIn(environment: object): string[] {
  return Object.keys(environment).filter((name) => !KNOWN.has(name) && !NOT_OURS.includes(name));
}

/** What stands behind a word of the Dockerfile, line by line. */
function linesOf(stage: string, word: string): string[] {
  return [...stage.matchAll(new RegExp(`^${word} (.*)$`, "gm"))].map((match) => match[1]!);
}

describe("the Dockerfile, held against the package", () => {
  const text = read("deploy", "Dockerfile").replace(/\\\n\s*/g, "");
  const [, built = "", image = ""] = text.split(/^FROM /m);

  it("builds on a Node that the package takes", () => {
    const wanted = Number(/(\d+)/.exec(engines.node)![1]);
    const used = [built, image].map((stage) => Number(/^node:(\d+)/.exec(stage)?.[1]));
    expect(used).toEqual([wanted, wanted]);
  });

  it("copies files that are there, or that its own build makes", () => {
    const first = linesOf(built, "COPY").flatMap((line) => line.split(" ").slice(0, -1));
    expect(first.filter((name) => !isThere(name))).toEqual([]);
    const parts = linesOf(built, "RUN")
      .join()
      .match(/build\.mjs ([a-z ]+)/)![1]!
      .trim()
      .split(" ");
    expect(parts.toSorted()).toEqual(["cli", "server", "web"]);
    const taken = linesOf(image, "COPY").map((line) => /--from=built \/drykeel\/(\S+)/.exec(line)![1]!);
    expect(taken).toEqual(["package.json", "node_modules", "dist", "patterns"]);
    const [folder, file] = /dist\/(\w+)\/(\w+)\.js/.exec(linesOf(image, "CMD").at(-1)!)!.slice(1);
    expect(isThere("src", folder!, `${file}.ts`)).toBe(true);
    expect(read("scripts", "build.mjs")).toContain(`${folder}: ["${file}.ts"`);
  });

  it("sets what the server reads, and no other, on one port throughout", () => {
    const environment = pairsIn(linesOf(image, "ENV").join(" "));
    expect(unknownIn(environment)).toEqual([]);
    expect(readSettings(environment, ["--empty"])).toMatchObject({ port: DEFAULT_PORT, dataDir: "/data", empty: true });
    expect(linesOf(image, "EXPOSE")).toEqual([String(DEFAULT_PORT)]);
    expect(linesOf(image, "VOLUME")).toEqual([environment["DATA_DIR"]]);
  });

  it("runs as somebody who is not root and owns the data alone", () => {
    expect(linesOf(image, "USER")).toEqual(["node"]);
    expect(linesOf(image, "RUN")).toEqual(["mkdir /data && chown node:node /data"]);
    expect(image.indexOf("\nUSER")).toBeLessThan(image.indexOf("\nCMD"));
  });

  it("keeps data, dependencies and history of the checkout out of the image", () => {
    expect(read(".dockerignore").split("\n")).toEqual(expect.arrayContaining([".git", "data", "dist", "node_modules"]));
  });

  it("asks for health by a command that ends with 0 where the station answers, and with 1 where nobody does", async () => {
    const [program, ...args] = JSON.parse(/^HEALTHCHECK .*?CMD (\[.*\])$/m.exec(image)![1]!) as string[];
    const station = await stageStation();
    await station.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = station.app.server.address() as AddressInfo;
    const asked = async (to: number) => {
      const env = { ...process.env, PORT: String(to) };
      const [code] = (await once(spawn(program!, args, { env, stdio: "ignore" }), "exit")) as [number | null];
      return code;
    };
    expect(await asked(port)).toBe(0);
    await station.app.close();
    expect(await asked(port)).toBe(1);
  });
});

interface Compose {
  readonly services: Record<string, Service>;
  readonly volumes: Record<string, unknown>;
}

interface Service {
  readonly build?: { readonly context: string; readonly dockerfile: string };
  readonly command?: string;
  readonly environment?: Record<string, string>;
  readonly volumes?: readonly string[];
}

describe("the compose file, held against server and image", () => {
  const given = { POSTGRES_PASSWORD: "x9", STATION: "pumps.example.org" };
  const filled = read("deploy", "compose.yaml").replace(
    /\$\{(\w+)(?::\?[^}]*)?\}/g,
    (_all, name: string) => given[name as keyof typeof given],
  );
  const { services, volumes } = parse(filled) as Compose;
  const station = services["station"]!;

  it("builds what is there", () => {
    const { context, dockerfile } = station.build!;
    expect(normalize(join("deploy", context))).toBe(".");
    expect(isThere(dockerfile)).toBe(true);
  });

  it("sets what the server reads, and leads it to the database that it makes", () => {
    expect(unknownIn(station.environment!)).toEqual([]);
    const settings = readSettings(station.environment!, []);
    expect(settings.origin).toBe("https://pumps.example.org");
    const url = new URL(settings.databaseUrl!);
    const database = services["database"]!.environment!;
    expect([url.username, url.password, url.pathname, url.hostname]).toEqual([
      database["POSTGRES_USER"],
      database["POSTGRES_PASSWORD"],
      `/${database["POSTGRES_DB"]}`,
      "database",
    ]);
  });

  it("leads the proxy to the port of the image, and names every volume that is mounted", () => {
    expect(services["proxy"]!.command).toBe(
      `caddy reverse-proxy --from pumps.example.org --to station:${DEFAULT_PORT}`,
    );
    const mounted = Object.values(services).flatMap((one) => one.volumes ?? []);
    expect(mounted.map((one) => one.split(":")[0]).toSorted()).toEqual(Object.keys(volumes).toSorted());
    expect(station.volumes).toEqual(["station:/data"]);
  });

  it("asks for a password that an address can carry, and says so before the database is made", () => {
    expect(read("deploy", "compose.yaml")).toMatch(/letters and figures/);
  });
});

describe("the systemd unit, held against server and package", () => {
  const text = read("deploy", "drykeel.service");
  const valuesOf = (name: string) => [...text.matchAll(new RegExp(`^#?${name}=(.*)$`, "gm"))].map((match) => match[1]!);
  const environment = pairsIn(valuesOf("Environment").join(" "));
  const [program] = valuesOf("WorkingDirectory");

  it("starts the built server by itself, so that the program folder need not be written to", () => {
    expect(valuesOf("ExecStart")).toEqual(["/usr/bin/node dist/server/main.js --empty"]);
    expect(valuesOf("ProtectSystem")).toEqual(["strict"]);
    const writable = valuesOf("ReadWritePaths").join(" ").split(" ");
    expect(writable).toEqual([environment["DATA_DIR"]]);
    expect(writable).not.toContain(program);
  });

  it("sets what the server reads, and no other", () => {
    expect(unknownIn(environment)).toEqual([]);
    const settings = readSettings(environment, ["--empty"]);
    expect(settings).toMatchObject({ port: DEFAULT_PORT, host: "127.0.0.1", origin: "https://pumps.example.org" });
    expect(valuesOf("AssertPathExists")).toEqual([`${settings.dataDir}/drykeel.db`]);
    expect(valuesOf("RequiresMountsFor")).toEqual([settings.dataDir]);
  });

  it("is not started again where the data are not where they were, and does not run as root", () => {
    expect(valuesOf("RestartPreventExitStatus")).toEqual([String(LOST_EXIT_CODE)]);
    expect(valuesOf("User")).toEqual(["drykeel"]);
  });

  it("says how to build what it starts, by a script that the package has", () => {
    const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };
    expect(text).toContain("npm run build");
    expect(scripts["build"]).toBe("node scripts/build.mjs");
  });
});
