import type { ReactNode } from "react";
import { Button as AriaButton } from "react-aria-components";
import { Link } from "wouter";
import { useNewLook } from "./look/use-new-look.ts";
import { wordsOf } from "./look/words-of.ts";
import "./button.css";

export type ButtonKind = "primary" | "plain" | "quiet";

interface Look {
  /** `primary`: at least 19 mm tall, for gloves. `plain`: 52 px. `quiet`: words only, 44 px. */
  readonly kind?: ButtonKind;
  /** `grave`: what cannot be undone or grounds a kit. Says nothing by itself; the words must. */
  readonly tone?: "usual" | "grave";
  /** Fills the width it is given. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

export interface ButtonProps extends Look {
  /** Called on a single tap, click, Enter or Space. */
  readonly onPress?: () => void;
  /** Submits the form it stands in. */
  readonly type?: "button" | "submit";
  readonly isDisabled?: boolean;
  /** Shows that the tap was taken; a second tap does nothing. */
  readonly isBusy?: boolean;
  /** What it does, where its words alone do not say. */
  readonly label?: string;
  /** For a button that stays pressed. */
  readonly isPressed?: boolean;
  /** Where it opens something: is that open now? */
  readonly isOpen?: boolean;
  /** A key or a step, which writes nothing down: it takes taps as fast as they come. */
  readonly isQuick?: boolean;
}

/**
 * A tap target. Words name what happens ("Break the seal"), never "OK". It takes a tap only once its words have been on
 * the screen for a look, so that a second tap of one movement never answers what came up under the thumb.
 */
export function Button(props: ButtonProps) {
  const { isBusy = false, onPress } = props;
  const { isNew, onDown, takes } = useNewLook(`${props.label ?? ""} ${wordsOf(props.children)}`);
  // What is submitted was typed just before, and Enter submits it too.
  const isQuick = props.isQuick === true || props.type === "submit";
  const waits = isBusy || (isNew && !isQuick);
  const press = () => {
    if (isQuick || takes()) onPress?.();
  };
  return (
    <AriaButton
      className={classOf(props, isBusy, waits)}
      // Waiting, it keeps the focus and takes no tap. The library's own pending state announces itself through
      // an element that names what is not there.
      type={isBusy ? "button" : (props.type ?? "button")}
      isDisabled={props.isDisabled ?? false}
      {...(waits && { "aria-disabled": true })}
      onPressStart={onDown}
      {...(!waits && { onPress: press })}
      {...(props.label !== undefined && { "aria-label": props.label })}
      {...(props.isPressed !== undefined && { "aria-pressed": props.isPressed })}
      {...(props.isOpen !== undefined && { "aria-expanded": props.isOpen })}
    >
      {props.children}
    </AriaButton>
  );
}

function classOf(props: ButtonProps, isBusy: boolean, waits: boolean): string {
  if (isBusy) return `${lookOf(props)} button-busy`;
  return waits && props.isDisabled !== true ? `${lookOf(props)} button-new` : lookOf(props);
}

/** A link that looks like a button, for going to another page. */
export function ButtonLink(props: Look & { readonly to: string }) {
  return (
    <Link to={props.to} className={lookOf(props)}>
      {props.children}
    </Link>
  );
}

/** Buttons for gloved hands, at least 13 mm apart, wrapping to the next line where they must. */
export function GloveRow({ children }: { readonly children: ReactNode }) {
  return <div className="glove-row">{children}</div>;
}

/** Buttons for bare hands, side by side. */
export function ButtonRow({ children }: { readonly children: ReactNode }) {
  return <div className="button-row">{children}</div>;
}

function lookOf({ kind = "plain", tone = "usual", wide = false }: Look): string {
  return ["button", `button-${kind}`, tone === "grave" && "button-grave", wide && "button-wide"]
    .filter(Boolean)
    .join(" ");
}
