import { describe, expect, it } from "vitest";
import { allSteps, checkNamed, checksFinding, itemNamed, modeNamed, stepNamed, stepOfCheck } from "#kit";
import { shippedPattern } from "./shipped-patterns.ts";

const pattern = shippedPattern("brinnet-450@2");

/** Everything such a kit has that can go wrong, and the items, modes, checks or steps that cover it. */
const CLAUSES: Readonly<Record<string, readonly string[]>> = {
  "closure: clamp, lever and pin": ["clamp", "clamp-bent", "clamp-slack", "clamp-pin-lost", "clamp-force"],
  "lid and gasket": ["lid", "lid-warped", "lid-gasket", "lid-gasket-cut", "lid-gasket-look"],
  "seal whole and its number on record": ["seal", "seal-whole", "seal-number"],
  "counted reflective markings on every face": [
    "strips-lid",
    "strips-front",
    "strips-back",
    "strips-left",
    "strips-right",
    "strips-base",
  ],
  "lettering sizes on every face": [
    "letters-lid",
    "letters-front",
    "letters-back",
    "letters-left",
    "letters-right",
    "letters-base",
  ],
  "instruction card tied to a torch": ["card", "torch", "card-untied"],
  "card matching the container": ["card-number", "card-wrong-kit"],
  "cells and their printed dates": ["cells", "cells-date", "cells-out-of-date"],
  "wrappings and their bands": ["engine-wrapping", "hose-wrappings", "bands", "engine-wrapping-look", "bands-stretch"],
  "tank: seams": ["fuel-tank", "tank-seam-leaks", "tank-seams-look"],
  "tank: cap vent": ["tank-cap", "cap-vent-blocked", "cap-vent-open"],
  "tank: level against gauge": ["fuel-gauge", "tank-level", "gauge-match"],
  "tank: straps, bracket and stops": ["tank-straps", "tank-bracket", "straps-count", "bracket-look", "stops-count"],
  "recoil starter: cord and knot": ["recoil-starter", "recoil-cord-look", "recoil-knot-slipping"],
  "recoil starter: fixing screws": ["recoil-screws-count", "recoil-screw-loose"],
  "recoil starter: the spring's back": ["recoil-back-look", "recoil-spring-tired"],
  "spare starting cord": ["spare-cord", "spare-cord-length", "spare-cord-starts"],
  "fuel hose: clamps": ["fuel-clamps-count", "fuel-clamp-loose"],
  "fuel hose: o-ring": ["fuel-coupling", "coupling-o-ring-look"],
  "fuel hose: filter": ["fuel-filter", "filter-look"],
  "fuel hose: the place where it chafes": ["fuel-hose-chafe", "fuel-hose-chafed"],
  "air cleaner": ["air-cleaner", "air-cleaner-look"],
  "throttle and choke": ["controls", "throttle-moves", "choke-moves"],
  "fuel cock": ["fuel-cock", "cock-shuts"],
  "serial plate": ["serial-plate", "serial-number"],
  "rocker cover leaks": ["rocker-cover", "rocker-cover-leaks", "rocker-cover-look"],
  "carburettor leaks": ["carburettor", "carburettor-leaks", "carburettor-look"],
  "plug lead": ["spark-plug", "plug-lead-loose", "plug-lead-look"],
  "exhaust and its fixings": ["exhaust", "exhaust-look", "exhaust-fixings-count"],
  "oil level and colour": ["oil", "oil-level", "oil-colour"],
  "discharge port: coupling face": ["discharge-port", "discharge-face-look"],
  "discharge port: swing check valve free": ["check-valve-stuck", "check-valve-swings"],
  "suction port: face": ["suction-port", "suction-face-look"],
  "suction port: impeller turns": ["impeller-jammed", "impeller-turns"],
  "primer with its hose, clamps and handle": ["primer", "primer-hose", "primer-clamps-count", "primer-handle-look"],
  "container: inner sealant": ["case-sealant-loose", "case-inside-look"],
  "container: seams and dents": ["case-seam-open", "case-dented", "case-outside-look"],
  "container: handles": ["handles", "handles-count"],
  "container: rim": ["case-rim-damaged", "case-rim-look"],
  "suction hose: strainer, weight and cage": [
    "strainer",
    "strainer-weight-lost",
    "strainer-cage-loose",
    "strainer-look",
  ],
  "suction hose: seals": ["strainer-seal-bad", "strainer-seal-holds"],
  "suction hose: cams": ["suction-cam-stiff", "suction-cams-count"],
  "suction hose: gasket greased": ["suction-gasket", "suction-gasket-dry", "suction-gasket-look", "grease-gaskets"],
  "discharge hose: fold wear": ["discharge-fold-worn", "discharge-folds-look"],
  "discharge hose: clamp": ["discharge-clamp-loose", "discharge-clamp-look"],
  "discharge hose: cams": ["discharge-cam-stiff", "discharge-cams-count"],
  "discharge hose: gasket": ["discharge-gasket", "discharge-gasket-look"],
  "rigging in order": ["rig-place", "rig-suction", "rig-strainer", "rig-discharge", "rig-fill"],
  priming: ["prime-pump", "prime-time", "prime-slow"],
  starting: ["start", "starts-in-six", "hard-start"],
  "what to watch while it runs": ["watch-set", "casing-runs-dry-outside", "discharge-holds", "runs-through-range"],
  "starting with the spare cord beside unguarded machinery": ["starter-off", "wind-cord", "clear-away", "pull-spare"],
  drying: ["dry-carburettor", "dry-drain", "dry-hoses", "hoses-dry-look", "discharge-hose-wet", "dry-cool"],
  "new desiccant in each wrapping": ["wrap-set", "wrap-hoses", "desiccant-fresh"],
  "couplings where the next hands find them": ["stow-suction", "stow-discharge"],
  "fuel line parted": ["part-fuel-line"],
  "closing and sealing": ["close-clamp", "fit-seal"],
};

describe("the petrol kit covers", () => {
  it.each(Object.entries(CLAUSES))("%s", (_, ids) => {
    for (const id of ids) {
      const named =
        itemNamed(pattern, id) ?? modeNamed(pattern, id) ?? checkNamed(pattern, id) ?? stepNamed(pattern, id);
      expect(named, id).toBeDefined();
      if (modeNamed(pattern, id)) expect(checksFinding(pattern, id), id).not.toEqual([]);
      if (checkNamed(pattern, id)) expect(stepOfCheck(pattern, id), id).toBeDefined();
    }
  });

  it("rigging, spare start and restowing in the one order in which they go", () => {
    const order = allSteps(pattern).map((step) => step.id);
    const inOrder = (ids: readonly string[]) => expect(order.filter((id) => ids.includes(id))).toEqual(ids);
    inOrder(["rig-place", "rig-suction", "rig-strainer", "rig-discharge", "rig-fill", "start", "prime-pump", "warm"]);
    inOrder(["spare-lead-off", "starter-off", "wind-cord", "clear-away", "pull-spare", "stop-spare", "starter-on"]);
    inOrder([
      "refuel",
      "part-fuel-line",
      "wrap-set",
      "stow-set",
      "stow-suction",
      "stow-discharge",
      "stow-lid",
      "fit-seal",
    ]);
  });

  it("each face's strips as the container's marking line says", () => {
    const counts = pattern.checks.flatMap((check) =>
      check.kind === "count" && check.item === "markings" ? check : [],
    );
    const words = ["", "", "two", "three", "four"];
    const said = pattern.container.markings.map((line) => line.toLowerCase());
    for (const check of counts) {
      const face = check.id.replace("strips-", "");
      expect(said.find((line) => line.startsWith(face))).toContain(`${words[check.exactly]} reflective strips`);
    }
  });
});
