import type { SignedIn } from "#station";
import { Device } from "./device.ts";
import type { Kept } from "./kept-lines.ts";
import { startStation, type Where } from "./station.ts";

const PIN = "730284";

/** Sets an empty station up with three people, each on a device of their own. */
export async function foundStation(where: Where, kept: () => Promise<Kept["lines"]>): Promise<readonly Device[]> {
  const station = await startStation(where, { clockOffset: 0 });
  const { address = "", code = "" } = station;
  const place = { name: "Harbour", strength: 1, zone: "Europe/Oslo" };
  const founder = { device: "torture-device-1", deviceName: "One", pin: PIN };
  const setUp = { code, stationName: "Torture", name: "Keeper 1", place, ...founder };
  const first = await ask(`${address}/api/setup`, setUp);
  const seats = [first];
  for (const number of [2, 3]) {
    const invited = await ask(`${address}/api/invites`, { name: `Keeper ${number}`, role: "keeper" }, first.cookie);
    const arriving = { device: `torture-device-${number}`, deviceName: `Device ${number}`, pin: PIN };
    seats.push(await ask(`${address}/api/invites/accept`, { code: invited.body["code"], ...arriving }));
  }
  await station.end("SIGTERM");
  const set = [...(await kept()).values()].find((text) => text.includes('"place-set"'));
  const id = (JSON.parse(set!) as { subject: string }).subject.replace("place:", "");
  return seats.map(({ body, cookie }) => {
    const { person, device } = body as unknown as SignedIn;
    return new Device({ name: device, person: person.id, place: id, cookie });
  });
}

async function ask(
  url: string,
  body: object,
  cookie = "",
): Promise<{ readonly body: Record<string, unknown>; readonly cookie: string }> {
  const headers = { "content-type": "application/json", cookie };
  const reply = await fetch(url, { method: "POST", headers, body: JSON.stringify(body) });
  if (!reply.ok) throw new Error(`${url}: ${reply.status} ${await reply.text()}`);
  const set = reply.headers.getSetCookie().map((one) => one.split(";")[0]);
  return { body: (await reply.json()) as Record<string, unknown>, cookie: set.join("; ") };
}
