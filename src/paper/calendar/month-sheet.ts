import { addDays, daysInMonth, formatDate, formatMonth, weekdayOf, type PlainDate } from "#base";
import type { CalendarEvent } from "#station";
import { printable } from "../printable.ts";
import { writeTable, type Column } from "../rows.ts";
import { onceADay } from "./once-a-day.ts";
import { createSheet, MARGIN, type Sheet } from "../sheet.ts";

/** What the sheet of a month tells. */
export interface MonthSheet {
  readonly stationName: string;
  /** "YYYY-MM" */
  readonly month: string;
  /** Of any days; those of the month are shown. */
  readonly events: readonly CalendarEvent[];
  /** Names of people by id. */
  readonly people: ReadonlyMap<string, string>;
  /** RFC 3339 */
  readonly now: string;
}

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
/** Height of one day and of its number [pt], and how many lines it has room for. */
const DAY_HEIGHT = 62;
const DAY_HEAD = 13;
const SHOWN = 4;
const SIZE = 6.5;
const LIST: readonly Column[] = [
  { name: "Day", part: 0.18 },
  { name: "What", part: 0.3 },
  { name: "Who", part: 0.16 },
  { name: "Of it", part: 0.36 },
];

/**
 * A month on paper: the days as a wall calendar has them, and below it everything with its words.
 *
 * @returns a PDF
 */
export async function renderMonthSheet(month: MonthSheet): Promise<Uint8Array> {
  const title = formatMonth(month.month);
  const sheet = createSheet({ title, now: month.now, footer: `${month.stationName}   ${title}` });
  sheet.title(title);
  const isNow = month.now.startsWith(month.month);
  const overdue = isNow ? "on the day of printing" : "on the sheet of the month of printing, and not here";
  sheet.paragraph(`${month.stationName}. What is overdue stands ${overdue}.`);
  sheet.gap(6);
  const events = onceADay(month.events.filter(({ day }) => day.startsWith(month.month)));
  drawGrid(sheet, month.month, events);
  sheet.gap(8);
  if (events.length === 0) sheet.paragraph("Nothing has its day in this month.");
  else
    writeTable(
      sheet,
      LIST,
      events.map((one) => ({ cells: cellsOf(one, month.people) })),
    );
  return sheet.finish();
}

function cellsOf({ day, summary, description, people }: CalendarEvent, names: MonthSheet["people"]): readonly string[] {
  return [formatDate(day), summary, people.map((id) => names.get(id) ?? id).join(", "), description];
}

/** Weeks from Monday to Sunday that the month touches, as days. */
function weeksOf(month: string): readonly (readonly PlainDate[])[] {
  const first = `${month}-01`;
  const monday = addDays(first, 1 - weekdayOf(first));
  const [year, number] = month.split("-").map(Number);
  const days = weekdayOf(first) - 1 + daysInMonth(year!, number!);
  return Array.from({ length: Math.ceil(days / 7) }, (_, week) =>
    WEEKDAYS.map((_name, day) => addDays(monday, 7 * week + day)),
  );
}

function drawGrid(sheet: Sheet, month: string, events: readonly CalendarEvent[]): void {
  const width = sheet.width / WEEKDAYS.length;
  const { pdf } = sheet;
  const top = pdf.y;
  pdf.font("bold").fontSize(8).fillColor("#000");
  for (const [at, name] of WEEKDAYS.entries()) pdf.text(name, MARGIN + at * width + 3, top, { width: width - 6 });
  let y = top + 13;
  for (const week of weeksOf(month)) {
    for (const [at, day] of week.entries()) {
      const own = day.startsWith(month) ? events.filter((one) => one.day === day) : undefined;
      drawDay(sheet, { x: MARGIN + at * width, y, width }, day, own);
    }
    y += DAY_HEIGHT;
  }
  pdf.x = MARGIN;
  pdf.y = y;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** One day; empty where it is of the month before or after. */
function drawDay(
  { pdf }: Sheet,
  { x, y, width }: Box,
  day: PlainDate,
  own: readonly CalendarEvent[] | undefined,
): void {
  pdf.lineWidth(0.4).strokeColor("#555").rect(x, y, width, DAY_HEIGHT).stroke();
  if (own === undefined) return;
  pdf
    .font("bold")
    .fontSize(8)
    .text(String(Number(day.slice(8))), x + 3, y + 2, { lineBreak: false });
  pdf.font("regular").fontSize(SIZE);
  const fits = own.length > SHOWN ? SHOWN - 1 : own.length;
  const lines = own.slice(0, fits).map(({ summary }) => summary);
  if (own.length > fits) lines.push(`and ${own.length - fits} more, below`);
  const height = (DAY_HEIGHT - DAY_HEAD) / Math.max(1, lines.length);
  for (const [at, line] of lines.entries()) {
    pdf.text(printable(line), x + 3, y + DAY_HEAD + at * height, { width: width - 6, height, ellipsis: true });
  }
}
