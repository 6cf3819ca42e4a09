import { CautionBox } from "../../parts/index.ts";

/** Signs that hold for any boat: all there is to go by while nothing is computed of this one. */
export function LeaveSigns() {
  return (
    <CautionBox signal="WARNING" hazard="Signs to leave her by">
      <p>
        <strong>People off:</strong> the list no longer comes back, or the deck edge is at the water.
      </p>
      <p>
        <strong>Be ready:</strong> the water gains on pump and plug, she comes back slowly, or little freeboard is left.
        Lifejackets on, way out clear, nobody below alone, someone counts heads.
      </p>
      <p>The person in charge on scene decides, and does not wait for a figure.</p>
    </CautionBox>
  );
}
