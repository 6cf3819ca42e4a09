import { bareNumber, block, countNumber, idText, listOf, oneWord, quantityText, readingText } from "./schema-fields.ts";

/* The pump, hoses and engine of a pattern file. */

const curvePoint = block(
  {
    flow: quantityText("flow", "300 L/min", "Flow."),
    head: quantityText("length", "19 m", "Head."),
  },
  "A point of a curve.",
);

const hoseRun = (about: string) =>
  block(
    {
      length: quantityText("length", "15 ft", "Length."),
      bore: quantityText("length", "51 mm", "Inside diameter."),
      roughness: quantityText("length", "0.1 mm", "Darcy-Weisbach roughness; or hazenWilliams.").exactOptional(),
      hazenWilliams: bareNumber(40, 160, "Hazen-Williams coefficient; or roughness.").exactOptional(),
      fittings: bareNumber(0, 100, "Sum of the loss coefficients K of its fittings."),
    },
    about,
  );

export const hydraulicsBlock = block(
  {
    pump: block(
      {
        curve: listOf(curvePoint, 2, "Head against flow at rated speed, flow rising."),
        npshRequired: listOf(curvePoint, 2, "Net positive suction head required, flow rising.").exactOptional(),
        greatestLift: quantityText("length", "6 m", "Greatest suction lift the maker states.").exactOptional(),
      },
      "The pump.",
    ),
    suction: hoseRun("The suction hose; absent on a submersible pump.").exactOptional(),
    discharge: hoseRun("The discharge hose."),
    primer: block(
      {
        stroke: quantityText("volume", "0.5 L", "Volume of a stroke."),
        strokesPerMinute: countNumber(200, "Strokes a minute a person keeps up."),
        deadVolume: quantityText("volume", "3 L", "Air in the casing and primer, beside the hose."),
      },
      "The primer.",
    ).exactOptional(),
    proof: block(
      {
        grounds: bareNumber(0, 1, "Measured over expected flow below which the kit is grounded."),
        notes: bareNumber(0, 1, "Measured over expected flow below which it is noted."),
      },
      "How a proof run is judged.",
    ),
  },
  "What the pump, hoses and primer do.",
);

export const engineBlock = block(
  {
    tank: quantityText("volume", "6 L", "Fuel the tank holds."),
    burn: listOf(
      block(
        {
          throttle: bareNumber(0, 1, "Speed over rated speed."),
          burn: quantityText("flow", "1.5 L/h", "Fuel burnt."),
        },
        "A point of the burn.",
      ),
      2,
      "Fuel burnt against throttle, throttle rising.",
    ),
    fuel: readingText(80, "What it burns."),
    fuelKind: oneWord(["petrol", "diesel"], "What kind of fuel that is; petrol if not said.").exactOptional(),
    fuelItem: idText("Id of the item that is the fuel, whose age is the fuel's age.").exactOptional(),
    power: quantityText("power", "3 kW", "Rated shaft power.").exactOptional(),
  },
  "The engine.",
);
