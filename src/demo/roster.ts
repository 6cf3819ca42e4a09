import type { Role } from "#readiness";
import type { Hand } from "./log-writer.ts";

/** A person of the invented station and the PIN that exists only in the demo. */
export interface DemoAccount {
  readonly person: string;
  readonly name: string;
  readonly role: Role;
  readonly pin: string;
}

/** Everyone at the invented station. No real person, station or vessel is meant. */
export const ACCOUNTS: readonly DemoAccount[] = [
  { person: "mara-tolliver", name: "Mara Tolliver", role: "keeper", pin: "200417" },
  { person: "jonas-wick", name: "Jonas Wick", role: "crew", pin: "310822" },
  { person: "ede-sorrell", name: "Ede Sorrell", role: "crew", pin: "440119" },
  { person: "petra-quill", name: "Petra Quill", role: "assessor", pin: "590630" },
  { person: "hal-brandreth", name: "Hal Brandreth", role: "commander", pin: "610205" },
  { person: "ines-dunmore", name: "Ines Dunmore", role: "administrator", pin: "770918" },
];

export const STATION_NAME = "Brannock Reach rescue station";
export const ZONE = "UTC";

export interface DemoPlace {
  readonly id: string;
  readonly name: string;
  readonly strength: number;
}

export const PLACES: readonly DemoPlace[] = [
  { id: "boathouse", name: "Boathouse", strength: 5 },
  { id: "outer-pier", name: "Outer pier store", strength: 2 },
  { id: "all-weather-boat", name: "All-weather boat", strength: 2 },
];

/** Rescue boats of the invented station: speeds loaded, times as such stations practise them. */
export const BOATS = [
  {
    id: "inshore",
    name: "Inshore boat",
    place: "boathouse",
    speed: (24 * 1852) / 3600,
    launch: 8 * 60,
    setUp: 12 * 60,
    carries: 2,
    mains: false,
  },
  {
    id: "all-weather",
    name: "All-weather boat",
    place: "all-weather-boat",
    speed: (17 * 1852) / 3600,
    launch: 15 * 60,
    setUp: 10 * 60,
    carries: 4,
    mains: true,
  },
] as const;

export const DEVICES = [
  { id: "workbench-tablet", name: "Workbench tablet" },
  { id: "keeper-phone", name: "Keeper's phone" },
  { id: "pier-tablet", name: "Pier tablet" },
] as const;

export const KEEPER: Hand = { by: "mara-tolliver", device: "workbench-tablet" };
export const CREW: Hand = { by: "jonas-wick", device: "pier-tablet" };
export const SECOND_CREW: Hand = { by: "ede-sorrell", device: "keeper-phone" };
export const ASSESSOR: Hand = { by: "petra-quill", device: "pier-tablet" };
export const ADMINISTRATOR: Hand = { by: "ines-dunmore", device: "workbench-tablet" };
