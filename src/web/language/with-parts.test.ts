import { isValidElement, type ReactElement } from "react";
import { expect, test } from "vitest";
import { withParts } from "./with-parts.ts";

type Say = (of: { readonly kit: string; readonly at: string }) => string;

function piecesOf(say: Say): unknown {
  const whole = withParts(say, { at: 12, kit: "Pump 1" });
  expect(isValidElement(whole)).toBe(true);
  return (whole as ReactElement<{ readonly children: unknown }>).props.children;
}

test("a message has its elements where the language puts them", () => {
  expect(piecesOf(({ kit, at }) => `${kit} was sealed at ${at}.`)).toEqual(["", "Pump 1", " was sealed at ", 12, "."]);
  expect(piecesOf(({ kit, at }) => `À ${at}, ${kit}`)).toEqual(["À ", 12, ", ", "Pump 1", ""]);
});
