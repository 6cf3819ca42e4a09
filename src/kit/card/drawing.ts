import { InputError, printGiven, type Fault } from "#base";

/*
 * The drawings of a card: line drawings in a small part of SVG, so that one file is drawn the same on screen and on
 * paper, by day and by night, and nothing in it can run.
 */

/** Field of every drawing, and its viewBox. */
export const DRAWING_FIELD = { width: 240, height: 180 } as const;

/** How a shape may look; screen and paper say what that is in ink. */
export const LOOKS = [
  "line",
  "thin",
  "bold",
  "firm",
  "thick",
  "stout",
  "ghost",
  "body",
  "tint",
  "dark",
  "solid",
  "paper",
  "live",
  "wet",
  "act",
  "water",
  "wave",
  "jet",
  "no",
  "yes",
] as const;
export type Look = (typeof LOOKS)[number];

/** One shape of a drawing: path data in the field, how it looks, and the item of the kit that it is. */
export interface Shape {
  readonly d: string;
  readonly as: Look;
  readonly part?: string;
}

/** A drawing of one step, from the back to the front. */
export interface Drawing {
  /** What is to be seen, in English; for whoever keeps the drawing. */
  readonly title: string;
  readonly shapes: readonly Shape[];
}

const MOST_CHARACTERS = 64 * 1024;
const OPENING = /^\s*<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 240 180">/;
const PASSED_OVER = /<title>[^<]*<\/title>|<style>[^<]*<\/style>|<!--[\s\S]*?-->/g;
const SHAPE = /<(path|circle)((?: [a-z-]+="[^"<>&]*")*) ?\/>/g;
const PATH_DATA = /^[MLHVCSQTAZ][MLHVCSQTAZmlhvcsqtaz0-9 .,-]*$/;
const NUMBER = /^-?\d{1,4}(\.\d{1,3})?$/;
const PART = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/**
 * Reads a drawing.
 *
 * @param text - an SVG of `viewBox="0 0 240 180"` that holds a title and paths and circles with a class of {@link LOOKS}
 * @param fileName - its name, for the messages
 * @throws InputError KI-112 not such a drawing: every fault
 * @example readDrawing('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 240 180"><title>A line</title><path class="line" d="M0 0L9 9"/></svg>', "a.svg").shapes.length // 1
 */
export function readDrawing(text: string, fileName: string): Drawing {
  const opening = OPENING.exec(text);
  if (text.length > MOST_CHARACTERS || opening === null) throw new InputError([notOurs(text, fileName)]);
  const inside = text.slice(opening[0].length).replace(/<\/svg>\s*$/, "");
  const drawn = inside.replace(PASSED_OVER, "");
  const tags = [...drawn.matchAll(SHAPE)].map(([, tag = "", attributes = ""]) => shapeOf(tag, attributes));
  const left = drawn.replace(SHAPE, "").trim();
  const wrong = [
    ...(left === "" ? [] : [left]),
    ...tags.flatMap((one) => (typeof one === "string" ? [one] : [])),
    ...(tags.length === 0 ? ["no shape"] : []),
  ];
  if (wrong.length > 0) throw new InputError(wrong.map((got) => faultOf(fileName, got)));
  const title = /<title>([^<]*)<\/title>/.exec(inside)?.[1] ?? "";
  return { title: title.trim(), shapes: tags.filter((one) => typeof one !== "string") };
}

/** The shape, or the text of what is wrong. */
function shapeOf(tag: string, attributes: string): Shape | string {
  const given = Object.fromEntries(
    [...attributes.matchAll(/([a-z-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]),
  );
  const { class: look, "data-part": part, ...own } = given as Record<string, string>;
  const as = LOOKS.find((one) => one === look);
  const d = tag === "path" ? pathData(own) : circleData(own);
  if (as === undefined || d === undefined || (part !== undefined && !PART.test(part))) return `<${tag}${attributes}/>`;
  return { d, as, ...(part !== undefined && { part }) };
}

function pathData({ d = "", ...others }: Readonly<Record<string, string>>): string | undefined {
  return PATH_DATA.test(d) && Object.keys(others).length === 0 ? d : undefined;
}

/** A circle as two arcs. */
function circleData({ cx = "", cy = "", r = "", ...others }: Readonly<Record<string, string>>): string | undefined {
  if (![cx, cy, r].every((one) => NUMBER.test(one)) || Object.keys(others).length > 0) return undefined;
  const [x, y, radius] = [Number(cx), Number(cy), Number(r)];
  const arc = (by: number) => `a${radius} ${radius} 0 1 0 ${by} 0`;
  return `M${x - radius} ${y}${arc(2 * radius)}${arc(-2 * radius)}Z`;
}

function notOurs(text: string, fileName: string): Fault {
  return faultOf(fileName, text.length > MOST_CHARACTERS ? `${text.length} characters` : text.slice(0, 80));
}

function faultOf(fileName: string, got: string): Fault {
  return {
    code: "KI-112",
    field: fileName,
    got: printGiven(got),
    allowed: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 240 180"> with <title>, <style>, and <path class d/> or <circle class cx cy r/>, class one of ${LOOKS.join(", ")}`,
    remedy: "Take out or redraw what is named.",
  };
}
