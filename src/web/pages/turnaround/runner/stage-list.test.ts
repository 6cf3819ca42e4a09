import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { listLines } from "#web/act/lines.ts";
import { SAMPLE, sampleTurnaround } from "#web/kit-view/sample.ts";
import { holdWords } from "#web/language/index.ts";
import { StageList } from "./stage-list.tsx";

const nothing = () => undefined;

describe("all lines at a glance", () => {
  it("offer, above the first of them, to stop half-way and close the kit as grounded", async () => {
    await holdWords("turnaround", "act");
    const view = { people: [], devices: [], device: "phone" };
    const lines = listLines(SAMPLE, sampleTurnaround());
    const list = { open: { pattern: SAMPLE, view }, lines, onPick: nothing, onStop: nothing };
    const shown = renderToStaticMarkup(createElement(StageList, list));
    expect(shown).toMatch(/<button[^>]*>[^<]*Stop here: close the kit as grounded.*Do vent/s);
  });
});
