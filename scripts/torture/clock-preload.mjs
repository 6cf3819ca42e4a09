// Loaded before a server by `--import`: its clock is off by CLOCK_OFFSET_MS, as after a dead battery or a wrong hand.
const offset = Number(process.env.CLOCK_OFFSET_MS ?? 0);
const RealDate = Date;
globalThis.Date = class extends RealDate {
  constructor(...given) {
    super(...(given.length === 0 ? [RealDate.now() + offset] : given));
  }
  static now() {
    return RealDate.now() + offset;
  }
};
