import { useId } from 'react';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import { buildingConditionIds, condition, type ConditionId } from '../../domain/simulate/conditions.ts';
import { useMedia } from '../parts/useMedia.ts';

interface Props {
  readonly at: ConditionId;
  readonly onChange: (id: ConditionId) => void;
  readonly findings: readonly BuildingFinding[];
}

/** Which condition the building is looked at in. At a desk all stand side by side; on a phone they would fill it. */
export function ConditionSwitch({ at, onChange, findings }: Props) {
  const id = useId();
  const isNarrow = useMedia('(max-width: 47.99rem)');
  const choices = buildingConditionIds.map((one) => ({
    id: one,
    name: condition(one).name,
    severe: findings.filter(({ severity, conditions }) => severity === 'severe' && conditions.includes(one))
      .length,
  }));
  if (isNarrow) {
    return (
      <div className="field">
        <label htmlFor={id}>Condition</label>
        <select
          id={id}
          className="input"
          value={at}
          onChange={(event) => onChange(event.target.value as ConditionId)}
        >
          {choices.map(({ id: value, name, severe }) => (
            <option key={value} value={value}>
              {severe > 0 ? `${name}: ${severe} severe` : name}
            </option>
          ))}
        </select>
      </div>
    );
  }
  return (
    <fieldset className="condition-switch">
      <legend className="lettering">Condition</legend>
      {choices.map(({ id: value, name, severe }) => (
        <label key={value} className="condition-choice">
          <input
            type="radio"
            name="condition"
            value={value}
            checked={value === at}
            onChange={() => onChange(value)}
          />
          <span>{name}</span>
          {severe > 0 && <span className="soft">{severe} severe</span>}
        </label>
      ))}
    </fieldset>
  );
}
