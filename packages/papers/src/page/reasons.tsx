import { levelOf, type Notice } from '@clampwright/core';
import { label, levelText, remedy, says, type UnitSystem } from '@clampwright/words';

/** Every reason with what would mend it, in the order of the plan: stops first. */
export function Reasons({ reasons, units }: { readonly reasons: readonly Notice[]; readonly units: UnitSystem }) {
  if (reasons.length === 0) return null;
  return (
    <ol className="reasons">
      {reasons.map((reason) => {
        const level = levelOf(reason.code);
        return (
          <li key={JSON.stringify(reason)} className={level}>
            <span className="level">{levelText(level)}</span>
            <p>{says(reason, units)}</p>
            <p className="remedy">
              <span>{label('joint.remedy')}</span> {remedy(reason, units)}
            </p>
          </li>
        );
      })}
    </ol>
  );
}
