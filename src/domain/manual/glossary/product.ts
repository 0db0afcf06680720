import type { Edit } from '../../commands/command.ts';
import type { VerdictKind } from '../../model/verdict.ts';
import { type ReviewState, reviewStateWords, verdictWords } from '../../review/words.ts';
import { type Severity, severityWords } from '../../simulate/outcome.ts';
import { pageWords } from '../pages.ts';
import { own, type Term, trade } from './term.ts';

export const pageTerms: readonly Term[] = Object.values(pageWords).map(({ name, says }) => own(name, says));

/** What a step of the log can change; one for each kind of edit. */
export const editTerms: Readonly<Record<Edit['kind'], Term>> = {
  setProject: own('Text of the project', 'Its name, who prepared it, the jurisdiction or the notes.'),
  setBasis: own('Code basis', 'Which codes and editions the project is judged under.'),
  setWeights: own('Weights', 'How much each part of the score counts.'),
  setBuildingFact: own('Answer for the building', 'A fact that holds for every opening, such as sprinklers.'),
  setUsual: own('The usual', 'What most doors of the building are like; taken at a door by one press.'),
  putFloor: own('Floor', 'A floor that is added, renamed, moved or removed.'),
  putSpace: own('Space', 'A room or other space that is added, changed or removed.'),
  putAmendment: own('Local amendment', 'A rule of the jurisdiction that is added, changed or removed.'),
  keepSetNumbers: own('Numbers of hardware sets', 'Which number each set keeps from one issue to the next.'),
  putPrice: own('Price', 'What the project itself says that an item costs.'),
  putItemEntry: own('Item', 'Finish, key set and who supplies, installs and wires an item.'),
  setBid: own(
    'Terms of the bid',
    'Project number, address, currency, tax, mark-up and who drew and checked it.',
  ),
  putHardwareSet: own(
    'Hardware set',
    'A set that gets its number, is renamed, revised or merged, or whose openings change.',
  ),
  putOpening: own('Opening', 'An opening that is added, brought in, or removed.'),
  setOpening: own('Place of an opening', 'Its mark, its floor, the spaces on its sides, or its notes.'),
  setFact: own('Answer', 'What is known of one question at one opening.'),
  putCloset: own('Closet', 'A closet for power supplies that is added, changed or removed.'),
  putSupply: own('Power supply', 'A lock power supply that is added, changed or removed.'),
  putStandard: own(
    'Owner’s standard',
    'An edition of an owner’s standard that the project follows, or no more.',
  ),
  putProduct: own('Product', 'A row of the project’s product book that is added, changed or removed.'),
  setRun: own('Run', 'The cable run of an opening, its closet or its supply.'),
  putRun: own('Run taken back', 'Where the cable of an opening goes, put back as it was.'),
  setAside: own('Set aside', 'What a file held and could not be read, until someone has resolved it.'),
  takeParts: own(
    'Merge',
    'The edits of another copy of this project, taken in at once or taken back at once.',
  ),
  settle: own('Difference settled', 'A choice between two values that were entered in two copies.'),
  appendVerdict: own(
    'Verdict',
    'What a reviewer decided, or why an earlier verdict was withdrawn; it is never removed.',
  ),
  putRemark: own('Remark', 'A comment or question at an opening, its answers, and that it was closed.'),
  putPhoto: own(
    'Photo',
    'A photo of an opening that is added, captioned, pointed at with arrows or removed.',
  ),
  putPlan: own('Floor plan', 'A drawing of a floor that is added, given a scale or removed.'),
  putPin: own('Pin', 'Where an opening, a closet or a space stands on a floor plan.'),
  setOverride: own('Choice by hand', 'An arrangement that a person chose in place of the engine’s.'),
};

const verdictSays: Readonly<Record<VerdictKind, string>> = {
  approved: 'The reviewer lets the arrangement go out as it is, with name and day.',
  refused: 'The reviewer does not accept the arrangement and says why.',
  approvedWithConditions:
    'The reviewer lets it go out with conditions, which become lines of set, sequence and acceptance test.',
  passedToAuthority: 'The reviewer leaves it to the authority having jurisdiction and says what to ask.',
  withdrawn: 'An earlier verdict is taken back with a reason; both stay on file.',
};
const reviewStateSays: Readonly<Record<ReviewState, string>> = {
  notNeeded: 'Nothing in this decision requires a signature.',
  open: 'Something requires a signature and no one has signed yet.',
  approved: 'Signed, and nothing a reviewer judged has changed since.',
  refused: 'A reviewer did not accept it; it must be changed and looked at again.',
  stale: 'What was signed has changed; it must be reviewed again.',
  approvedWithConditions: 'Signed on conditions, and nothing a reviewer judged has changed since.',
  passedToAuthority: 'The question lies with the authority having jurisdiction.',
};
export const verdictTerms: readonly Term[] = [
  ...(Object.keys(verdictSays) as VerdictKind[]).map((id) => own(verdictWords[id], verdictSays[id])),
  ...(Object.keys(reviewStateSays) as ReviewState[]).map((id) =>
    own(reviewStateWords[id], reviewStateSays[id]),
  ),
];

const severitySays: Readonly<Record<Severity, string>> = {
  severe: 'A person could be kept in, or a fire door could stand open in a fire.',
  serious: 'Something protected is left open, or the arrangement does not do its job.',
  note: 'Worth knowing; nothing waits for it.',
};
export const severityTerms: readonly Term[] = (Object.keys(severitySays) as Severity[]).map((id) =>
  own(severityWords[id], severitySays[id]),
);

/** What a cell of the condition table can say, on screen and on the test sheet. */
export const outcomeTerms: readonly Term[] = [
  trade('Locked', 'From the secure side the opening does not open without credential or key.'),
  trade('Unlocked', 'From the secure side anyone can open.'),
  trade('Free', 'A person leaving opens at once, without key, card or code.'),
  trade('Delayed', 'A person leaving pushes and waits the seconds named.'),
  own('By staff', 'A person leaving waits until someone on duty opens.'),
  own('Blocked', 'A person leaving does not get out.'),
  trade('Latched', 'A bolt holds the shut leaf without power.'),
  trade('Not latched', 'The shut leaf opens by a push or a pull.'),
  trade('Energized', 'Current flows through the coil of the lock.'),
  own('No current', 'There is a coil, and nothing flows through it.'),
  own('No coil', 'Nothing at this lock takes current from the supply.'),
  trade('Alarm', 'The opening reports that it is forced, held open, or that its delay runs.'),
];
