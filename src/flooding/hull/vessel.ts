import type { Compartment } from "./compartment.ts";
import type { HullForm } from "./hull-form.ts";
import type { Opening } from "../openings/opening.ts";

/** A boat that sinks, trims and heels as water comes in. */
export interface FloatingVessel {
  readonly kind: "floating";
  readonly hull: HullForm;
  /** As she floats dry, amidships [m]. Default: the draught the hull is drawn for. */
  readonly draught?: number;
  /** Draught aft less draught forward, dry [m]. Default 0. */
  readonly trim?: number;
  /** Height of the centre of gravity above the keel, dry [m]. Default: see `likelyGravityHeight`. */
  readonly kg?: number;
  readonly compartments: readonly Compartment[];
  /** What counts as losing her. Default: water over the deck edge. */
  readonly lostWhen?: "deck-edge" | "foundered";
}

/** A space with upright sides in a vessel held at a given outside level. */
export interface FixedVessel {
  readonly kind: "fixed";
  /** Above the keel [m]. */
  readonly outsideLevel: number;
  readonly compartments: readonly Prism[];
}

export interface Prism {
  readonly name: string;
  /** Plan area [m²]. */
  readonly area: number;
  /** Default 1. */
  readonly permeability?: number;
  /** Floor above the keel [m]. Default 0. */
  readonly floor?: number;
  /** Ceiling above the keel [m]. Default: none. */
  readonly top?: number;
  /** Water at the start: level above the keel [m], or volume [m³]. */
  readonly level?: number;
  readonly water?: number;
}

export type Vessel = FloatingVessel | FixedVessel;

/** An opening in its place. */
export interface PlacedOpening {
  readonly name: string;
  readonly opening: Opening;
  /** Name of the compartment it leads into. */
  readonly into: string;
  /** What it leads from. Default: the sea. */
  readonly from?: string;
  /** Forward of the after end, and to starboard [m]. Default: the middle of the compartment it leads into. */
  readonly x?: number;
  readonly y?: number;
}

/** What a pump moves against the height it lifts, from the water it stands in to its discharge. */
export type PumpDelivery =
  | { readonly kind: "steady"; readonly flow: number }
  /** Head H = H₀ − c·Q², in [m] and [m³/s]. */
  | { readonly kind: "parabola"; readonly shutOffHead: number; readonly bend: number; readonly dischargeHeight: number }
  /** Straight lines between points, flow 0 above the last lift. Lifts ascending [m], flows [m³/s]. */
  | {
      readonly kind: "table";
      readonly points: readonly { readonly lift: number; readonly flow: number }[];
      readonly dischargeHeight: number;
    };

export interface PlacedPump {
  readonly name: string;
  /** Name of the compartment it draws from. */
  readonly compartment: string;
  readonly delivery: PumpDelivery;
  /**
   * Height of the strainer above the keel [m]: lower water leaves it bare. Default: the floor of the compartment; with
   * no place given either, wherever the water runs to.
   */
  readonly suctionHeight?: number;
  readonly x?: number;
  readonly y?: number;
  /** Runs from and until [s]. Default: throughout. */
  readonly from?: number;
  readonly until?: number;
  /** Stops for so long each time it has run so long [s]. */
  readonly refuel?: { readonly runtime: number; readonly pause: number };
}

/** Something that changes at a known time. */
export type Change =
  | {
      readonly kind: "pump-share";
      readonly at: number;
      readonly pump: string;
      readonly share: number;
      readonly says: string;
    }
  | {
      readonly kind: "opening-share";
      readonly at: number;
      readonly opening: string;
      readonly share: number;
      readonly says: string;
    };
