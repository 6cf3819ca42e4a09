import { sayCount } from "#base";
import { itemNamed, modeNamed } from "#kit";
import {
  compareVisit,
  drawnIn,
  visitKey,
  type ComparedFault,
  type Visit,
  type VisitedLine,
  type VisitOutcome,
} from "#readiness";
import { drillsOf, sayAssessorSaw, sayFoundWrong, sayKeeperWrote, sayVisitedLine, type KitDrill } from "#station";
import { nameIn, type OutRow, type TableSource } from "./table-source.ts";

/**
 * Every line drawn for a visit. Of a visit that is on nothing of the keeper's is told, no line that was not looked at yet, and
 * not the seed that draws them: it is looked at blind.
 */
export function visitRows(source: TableSource): readonly OutRow[] {
  const about = ["Visit begun", "By", "Ended", "Places", "Kit", "Serial", "Line"];
  const heads = [...about, "Keeper wrote", "Assessor saw", "Stands", "Found wrong", "Seed"];
  return [heads, ...source.visits.flatMap((visit) => rowsOf(visit, source))];
}

function rowsOf(visit: Visit, source: TableSource): readonly OutRow[] {
  const { begun, ended } = visit;
  const places = begun.places.map((id) => nameIn(source.places, id)).join(", ");
  const first = [begun.at, nameIn(source.people, begun.by), ended?.at ?? "", places];
  const seed = ended ? begun.seed : "";
  if (drawnIn(visit).length === 0) return [[...first, ...Array<string>(7).fill(""), seed]];
  const lines = compareVisit(visit, source);
  const told = lines.filter((line) => ended !== undefined || visit.seen[visitKey(line)] !== undefined);
  const rows = told.map((line): OutRow => {
    return [...first, ...kitCells(line), sayVisitedLine(line), ...saidOf(line, ended !== undefined), seed];
  });
  return [...rows, ...leftRows(lines.filter((line) => !told.includes(line))).map((row) => [...first, ...row])];
}

function kitCells(line: VisitedLine): readonly string[] {
  return [line.ofKit?.name ?? line.kit, line.ofKit?.serial ?? ""];
}

/** How many lines of each kit are still to be looked at, and not which. */
function leftRows(left: readonly VisitedLine[]): readonly OutRow[] {
  const ofKit = new Map(left.map((line) => [line.kit, line]));
  return [...ofKit.values()].map((line) => {
    const count = left.filter(({ kit }) => kit === line.kit).length;
    return [...kitCells(line), `${sayCount(count, "line")} not looked at yet`, "", "", "", "", ""];
  });
}

function saidOf(line: VisitedLine, isOver: boolean): OutRow {
  const wrote = isOver ? sayKeeperWrote(line) : "";
  return [wrote, sayAssessorSaw(line), isOver ? STANDS[line.outcome] : "", sayFoundWrong(line) ?? ""];
}

const STANDS: Readonly<Record<VisitOutcome, string>> = {
  "both-right": "both right",
  "both-wrong": "both wrong",
  missed: "missed by the keeper",
  "false-alarm": "false alarm",
  "not-possible": "not possible",
  left: "left out",
  "not-at-hand": "not at hand",
};

/** Every planted fault that was revealed, and each drill without one. */
export function drillRows(source: TableSource): readonly OutRow[] {
  const heads = [
    "Kit",
    "Serial",
    "Begun",
    "Ended",
    "How",
    "Drilled",
    "Item",
    "Fault",
    "Found",
    "Found by",
    "Taken out",
  ];
  const { on, over } = drillsOf(source);
  const rows = [...on, ...over].flatMap((one): readonly OutRow[] => {
    const { faults } = one.comparison;
    const first = drillCells(one, source);
    if (faults.length === 0) return [[...first, ...Array<string>(5).fill("")]];
    return faults.map((fault) => [...first, ...faultCells(one, fault, source)]);
  });
  return [heads, ...rows];
}

function drillCells({ kit, drill }: KitDrill, { people }: TableSource): readonly string[] {
  const drilled = drill.begun.trainees.map((id) => nameIn(people, id)).join(", ");
  return [kit.name, kit.serial, drill.begun.at, drill.ended?.at ?? "", drill.ended?.how ?? "on", drilled];
}

function faultCells({ pattern }: KitDrill, fault: ComparedFault, { people }: TableSource): readonly string[] {
  const { item, mode, found, removed } = fault;
  const itemName = (pattern && itemNamed(pattern, item)?.name) ?? item;
  const modeName = (pattern && modeNamed(pattern, mode)?.name) ?? mode;
  const by = found ? nameIn(people, found.raised.by) : "";
  return [itemName, modeName, found ? "found" : "missed", by, removed?.at ?? ""];
}
