// Loaded before a server by `--import`: its clock is off by CLOCK_OFFSET_MS, as after a dead battery or a wrong hand. With
// CLOCK_JUMP_AFTER_MS it is right at first, and jumps that long after the process began.
const offset = Number(process.env.CLOCK_OFFSET_MS ?? 0);
const jumpAfter = Number(process.env.CLOCK_JUMP_AFTER_MS ?? 0);
const RealDate = Date;
const now = () => RealDate.now() + (performance.now() >= jumpAfter ? offset : 0);
globalThis.Date = class extends RealDate {
  constructor(...given) {
    super(...(given.length === 0 ? [now()] : given));
  }
  static now() {
    return now();
  }
};
