import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOMS } from "../test/architecture/rooms.ts";

const BEGIN = "<!-- rooms: npx tsx scripts/room-picture.ts -->";
const END = "<!-- end of rooms -->";
const PAGE = join(import.meta.dirname, "..", "docs", "architecture.md");

/** The list of rooms as a picture: every arrow says who may import whom, but for those that another way implies. */
export function renderRooms(): string {
  const names = Object.keys(ROOMS);
  const layers = [...new Set(names.map((name) => ROOMS[name]!.layer))].toSorted((a, b) => b - a);
  const boxes = layers.flatMap((layer) => [
    `  subgraph L${layer}`,
    ...names.filter((name) => ROOMS[name]!.layer === layer).map((name) => `    ${idOf(name)}["${name}"]`),
    "  end",
  ]);
  const arrows = names.flatMap((name) => directOf(name).map((other) => `  ${idOf(name)} --> ${idOf(other)}`));
  return ["```mermaid", "flowchart TD", ...boxes, ...arrows, "```"].join("\n");
}

/** The page with its picture as the list says now. */
export function withRooms(page: string): string {
  const [before, rest] = [page.indexOf(BEGIN), page.indexOf(END)];
  return `${page.slice(0, before)}${BEGIN}\n\n${renderRooms()}\n\n${page.slice(rest)}`;
}

function directOf(name: string): readonly string[] {
  const rooms = ROOMS[name]!.rooms;
  return rooms.filter((room) => !rooms.some((other) => other !== room && reaches(other, room)));
}

function reaches(from: string, to: string): boolean {
  return (ROOMS[from]?.rooms ?? []).some((room) => room === to || reaches(room, to));
}

function idOf(name: string): string {
  return name.replace("/", "-");
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  writeFileSync(PAGE, withRooms(readFileSync(PAGE, "utf8")));
}
