import { linkTo } from '../../app/addresses.ts';
import { orderedOpenings } from '../../app/order.ts';
import { useApp } from '../context.ts';
import { NewOpening } from '../schedule/NewOpening.tsx';
import { SetUp } from './SetUp.tsx';
import './walk.css';
import { WalkOpening } from './WalkOpening.tsx';

/** One question at a time, for a phone in a corridor: the question that settles most, answers as large as a thumb. */
export default function WalkPage() {
  const project = useApp((state) => state.document.project);
  const selectedId = useApp((state) => state.session.selectedId);
  const order = orderedOpenings(project);
  const opening = selectedId === null ? order[0] : project.openings[selectedId];
  return (
    <div className="sheet walk">
      {opening ? (
        <WalkOpening key={opening.id} project={project} opening={opening} order={order} />
      ) : (
        <div className="sheet-body stack">
          <div className="empty stack">
            {order.length === 0 ? (
              <>
                <h1>Nothing to walk yet</h1>
                <p>Add the first opening with its mark from the drawings.</p>
              </>
            ) : (
              <>
                <h1>This opening is not in the project</h1>
                <p>
                  It may have been removed, or the address belongs to another project. Choose another one on
                  the <a href={linkTo('schedule')}>schedule</a>.
                </p>
              </>
            )}
          </div>
          {order.length === 0 && <SetUp project={project} />}
          <NewOpening goesTo="walk" />
        </div>
      )}
    </div>
  );
}
