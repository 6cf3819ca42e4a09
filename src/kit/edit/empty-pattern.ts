/**
 * The least that a pattern may be: one item in a box, looked at, put back and sealed. To be written on from: its figures
 * are empty, for nobody has told them.
 *
 * @param id - of the new pattern, lower-case words joined by hyphens
 */
export function emptyPattern(id: string): string {
  return `# ${id}: written for this station.
id: ${id}
version: 1
name: New kit
summary: What it is and does, in a sentence or two.

container:
  name: Box with a lid
  mass: ""
  lifters: ""
  places:
    - { id: inside, name: Inside }
  markings:
    - Lid, two reflective strips and the kit number

policy:
  muster: ""
  turnaround: ""

items:
  - id: pump
    name: Pump
    place: inside
    modes:
      - id: pump-damaged
        name: Pump cracked or broken
        effect: grounds
        remedy: Change the pump.
        forbids: []
    checks:
      - id: pump-look
        kind: look
        ask: Look at the pump all round.
        expect: Whole, nothing cracked, nothing missing.
        finds: [pump-damaged]

stages:
  - id: open
    name: Open
    steps:
      - { id: open-box, text: Break the seal and open the box., minutes: "" }
  - id: examine
    name: Examine
    steps:
      - { id: look-pump, text: Look at the pump., checks: [pump-look], minutes: "" }
  - id: rig
    name: Rig
    steps:
      - { id: lay-out, text: Lay everything out as it will be used., minutes: "" }
  - id: run
    name: Run
    steps:
      - { id: run-pump, text: Write here how it is run and for how long., minutes: "" }
  - id: dry
    name: Dry
    steps:
      - { id: drain, text: Drain everything and wipe it dry., minutes: "" }
  - id: restow
    name: Restow
    steps:
      - { id: put-back, text: Put the pump back., stows: [pump], minutes: "" }
  - id: seal
    name: Seal
    steps:
      - { id: close, text: Close the lid and fit the new seal., minutes: "" }
`;
}
