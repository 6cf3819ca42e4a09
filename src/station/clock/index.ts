export { newestReceipt, newestStoredReceipt } from "./newest-receipt.ts";
export {
  judgeStationClock,
  latestBelieved,
  type DeviceClock,
  type StationClockVerdict,
} from "./judge-station-clock.ts";
export { DEVICE_CLOCK_HEADER, readStationClock, STATION_CLOCK_HEADER, type StationClockOff } from "./clock-headers.ts";
