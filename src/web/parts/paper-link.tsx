import { useState, type MouseEvent, type ReactNode } from "react";
import { saveFile, useThisDevice, type ServerDoor } from "../device/index.ts";
import type { Words } from "#words";
import { useWords } from "../language/index.ts";
import { usePreferences } from "../theme/index.ts";
import { paperAddress } from "./paper-address.ts";
import "./paper-link.css";

interface PaperLinkProps {
  /** Address of the paper at the station. */
  readonly href: string;
  /** What the file is called once saved, without its ending. */
  readonly name: string;
  /** What it does, where its words alone do not say. */
  readonly label?: string;
  /** `quiet`: a link among words. */
  readonly look?: "button" | "quiet";
  readonly children: ReactNode;
}

/** How it went: nothing asked yet, on its way, saved, or why there is none. */
type Getting = { readonly kind: "idle" | "asking" | "saved" } | { readonly kind: "none"; readonly because: string };

/**
 * A paper that the station prints, in the units of who asks for it. Fetched from within the app and handed to the browser as a file: followed as a link,
 * it would leave the app, and without a network there is no page to come back from.
 */
export function PaperLink({ href: paper, name, label, look = "button", children }: PaperLinkProps) {
  const words = useWords("parts");
  const { door } = useThisDevice();
  const href = paperAddress(paper, usePreferences().units);
  const [getting, setGetting] = useState<Getting>({ kind: "idle" });
  const press = (event: MouseEvent) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    if (getting.kind === "asking") return;
    setGetting({ kind: "asking" });
    void getPaper(door, href, `${name}.pdf`, words).then(setGetting);
  };
  return (
    <span className="paper-link">
      <a
        className={look === "button" ? "button button-plain" : undefined}
        href={href}
        onClick={press}
        {...(label !== undefined && { "aria-label": label })}
      >
        {children}
      </a>
      <output className={getting.kind === "none" ? "field-fault" : "quiet"}>{sayGetting(getting, words)}</output>
    </span>
  );
}

function sayGetting(getting: Getting, words: Words["parts"]): string {
  if (getting.kind === "none") return getting.because;
  if (getting.kind === "idle") return "";
  return getting.kind === "asking" ? words.asking() : words.savedAsFile();
}

async function getPaper(door: ServerDoor, href: string, name: string, words: Words["parts"]): Promise<Getting> {
  const reply = await door.bytes(href);
  if (reply.kind === "unreachable") return { kind: "none", because: words.notReached() };
  if (reply.kind === "refused")
    return { kind: "none", because: `${reply.problem.message} ${reply.problem.remedy}`.trim() };
  const { mime, content } = reply.value;
  saveFile(new Blob([content.slice()], { type: mime }), name);
  return { kind: "saved" };
}
