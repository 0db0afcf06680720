import { linkTo } from '../../app/addresses.ts';
import type { Floor } from '../../domain/model/project.ts';
import { isRegisterState, type RegisterFilter, registerStates } from '../../domain/review/filter.ts';

export type RegisterView = 'questions' | 'openings';

interface Props {
  readonly view: RegisterView;
  readonly onView: (view: RegisterView) => void;
  readonly filter: RegisterFilter;
  readonly onFilter: (filter: RegisterFilter) => void;
  readonly rules: readonly string[];
  readonly floors: readonly Floor[];
}

/** How the register is grouped, and to what it is narrowed. */
export function RegisterTools({ view, onView, filter, onFilter, rules, floors }: Props) {
  return (
    <div className="toolbar review-tools">
      <select
        className="input"
        aria-label="Grouped"
        value={view}
        onChange={(event) => onView(event.target.value === 'openings' ? 'openings' : 'questions')}
      >
        <option value="questions">By question</option>
        <option value="openings">By opening</option>
      </select>
      <select
        className="input"
        aria-label="Show"
        value={filter.state}
        onChange={(event) =>
          isRegisterState(event.target.value) && onFilter({ ...filter, state: event.target.value })
        }
      >
        {Object.entries(registerStates).map(([value, name]) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
      <select
        className="input"
        aria-label="Rule"
        value={filter.ruleId}
        onChange={(event) => onFilter({ ...filter, ruleId: event.target.value })}
      >
        <option value="">Every rule</option>
        {rules.map((id) => (
          <option key={id}>{id}</option>
        ))}
      </select>
      <select
        className="input"
        aria-label="Floor"
        value={filter.floorId}
        onChange={(event) => onFilter({ ...filter, floorId: event.target.value })}
      >
        <option value="">Every floor</option>
        {floors.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <input
        className="input"
        type="search"
        aria-label="Question or mark"
        placeholder="Question or mark"
        value={filter.text}
        onChange={(event) => onFilter({ ...filter, text: event.target.value })}
      />
      <div className="toolbar-group toolbar-end">
        <a className="button button-quiet" href={linkTo('print')}>
          Print the register
        </a>
        <a className="button button-quiet" href={linkTo('print', 'packet')}>
          Packet for the authority
        </a>
      </div>
    </div>
  );
}
