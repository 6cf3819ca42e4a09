import { isForCasualty, type KitState } from "#readiness";
import { ButtonLink, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { OUTCOMES } from "../outcomes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** How a sheet was closed, what was left aboard, and the way to take back each kit that came with us. */
export function HowItEnded() {
  const { casualty, view } = useSheet();
  if (!casualty.closed) return null;
  const { at, by, outcome, note, leftRunning = [], leftAboard = [] } = casualty.closed;
  const pumps = casualty.pumps.filter(({ pump }) => leftRunning.includes(pump));
  const away = view.kits.filter(
    ({ custody }) => custody.kind === "away" && isForCasualty({ ...casualty, closed: { at } }, custody),
  );
  const isLeft = ({ id }: KitState) => leftAboard.includes(id);
  return (
    <>
      <p className="verdict-detail">
        Closed <Timestamp at={at} /> by {nameOf(view, by)}: {OUTCOMES[outcome]}. {note}
      </p>
      {pumps.length > 0 && <p>Left running: {pumps.map(({ name }) => name).join(", ")}.</p>}
      {away.some(isLeft) && (
        <p>
          Still aboard:{" "}
          {away
            .filter(isLeft)
            .map(({ name }) => name)
            .join(", ")}
          .
        </p>
      )}
      {away
        .filter((kit) => !isLeft(kit))
        .map(({ id, name }) => (
          <ButtonLink key={id} wide to={`/kit/${id}/return`}>
            Take {name} back
          </ButtonLink>
        ))}
    </>
  );
}
