import { useState } from 'react';
import type { AgainChoices } from '../../domain/import/again.ts';
import {
  type RoomProposal,
  type RoomUses as Uses,
  roomUsesInWords,
  takingAll,
} from '../../domain/import/roomProposals.ts';

interface Props {
  readonly rooms: Uses;
  readonly choices: AgainChoices;
  readonly onChoices: (choices: AgainChoices) => void;
}

const shownAtFirst = 50;

/** What a model's rooms may be used for: proposed with its words and its doubt, taken one by one or together. */
export function RoomUses({ rooms, choices, onChoices }: Props) {
  const [all, setAll] = useState(false);
  const { proposals, unread } = rooms;
  if (proposals.length === 0 && unread.length === 0) return null;
  const shown = all ? proposals : proposals.slice(0, shownAtFirst);
  const set = (taken: AgainChoices['rooms']) => onChoices({ ...choices, rooms: taken });
  const clear = takingAll(proposals, false);
  const count = proposals.filter(({ key }) => choices.rooms[key] === true).length;
  return (
    <div className="stack stack-tight">
      <h4>Room uses</h4>
      <p>{roomUsesInWords(rooms)}</p>
      {proposals.length > 0 && (
        <>
          <div className="row">
            <button type="button" className="button button-small" onClick={() => set(clear)}>
              Take the {Object.keys(clear).length} without a doubt
            </button>
            <button
              type="button"
              className="button button-small"
              onClick={() => set(takingAll(proposals, true))}
            >
              Take all {proposals.length}
            </button>
            <button type="button" className="button button-quiet button-small" onClick={() => set({})}>
              Take none
            </button>
            <output>
              {count} of {proposals.length} taken
            </output>
          </div>
          <table className="schedule schedule-close schedule-folds">
            <thead>
              <tr>
                <th scope="col">Room</th>
                <th scope="col">In the model</th>
                <th scope="col">Read as</th>
                <th scope="col">Doubt</th>
                <th scope="col">Take it</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((one) => (
                <ProposalRow
                  key={one.key}
                  proposal={one}
                  isTaken={choices.rooms[one.key] === true}
                  onTake={(isTaken) => set({ ...choices.rooms, [one.key]: isTaken })}
                />
              ))}
            </tbody>
          </table>
          {shown.length < proposals.length && (
            <div className="row">
              <button type="button" className="button button-small" onClick={() => setAll(true)}>
                Show all {proposals.length}
              </button>
            </div>
          )}
        </>
      )}
      {unread.length > 0 && (
        <details>
          <summary>Room names not read, use stays unknown ({unread.length})</summary>
          <ul className="reasons">
            {unread.map(({ words, why, rooms: called }) => (
              <li key={`${words} ${why}`}>
                <strong>{called.join(', ')}</strong>: {words === '' ? '' : `${words}. `}
                {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function ProposalRow(props: {
  proposal: RoomProposal;
  isTaken: boolean;
  onTake: (isTaken: boolean) => void;
}) {
  const { room, floor, words, reads, doubt } = props.proposal;
  return (
    <tr>
      <th scope="row" data-head="Room">
        {room}
        {floor !== '' && <span className="soft"> ({floor})</span>}
      </th>
      <td data-head="In the model">{words}</td>
      <td data-head="Read as">{reads}</td>
      <td data-head="Doubt">{doubt === '' ? '–' : doubt}</td>
      <td data-head="Take it">
        <label className="choice">
          <input
            type="checkbox"
            aria-label={`Take ${reads} for ${room}`}
            checked={props.isTaken}
            onChange={(event) => props.onTake(event.target.checked)}
          />
          <span>{props.isTaken ? 'Taken' : 'Not taken'}</span>
        </label>
      </td>
    </tr>
  );
}
