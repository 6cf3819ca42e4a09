import type { FilePath } from "#kit";

const INPUTS = "input, select, textarea, summary, button";

/** Puts the cursor into the field at a path, or into the nearest around it that is shown. */
export function focusField(path: FilePath, page: ParentNode = document): void {
  const boxes = [...page.querySelectorAll<HTMLElement>("[data-at]")];
  const found = nearestAt(
    path,
    boxes.map(({ dataset }) => dataset["at"] ?? ""),
  );
  const box = boxes.find(({ dataset }) => dataset["at"] === found);
  const input = box?.querySelector<HTMLElement>(INPUTS);
  input?.focus({ preventScroll: true });
  input?.scrollIntoView({ block: "center" });
}

/** Of the places that are shown, the deepest on the way to a path; none where only places beside it are. */
export function nearestAt(path: FilePath, places: readonly string[]): string | undefined {
  const ways = path.map((_, depth) => path.slice(0, path.length - depth).join("/"));
  return ways.find((way) => places.includes(way));
}
