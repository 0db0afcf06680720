import { noBid } from './bid.ts';
import { defaultBasis } from '../codes/basis.ts';
import { defaultWeights, type Opening, type Project, type Space } from './project.ts';

export function newProject(id: string, name: string): Project {
  return {
    id,
    name,
    preparedBy: '',
    jurisdiction: '',
    notes: '',
    letter: '',
    basis: { ...defaultBasis },
    amendments: [],
    building: {},
    usual: {},
    weights: { ...defaultWeights },
    floors: {},
    spaces: {},
    openings: {},
    closets: {},
    supplies: {},
    productBook: {},
    runs: {},
    hardwareSets: {},
    prices: {},
    itemBook: {},
    bid: { ...noBid },
    verdicts: {},
    verdictIndex: {},
    remarks: {},
    photos: {},
    plans: {},
    pins: {},
    standards: {},
  };
}

/** A room of which nothing is known but its name. */
export function newSpace(id: string, name: string): Space {
  return {
    id,
    name,
    floorId: null,
    kind: 'room',
    securityLevel: null,
    occupantLoad: null,
    use: null,
    areaFt2: null,
    commonPathFt: null,
    publicWay: null,
  };
}

/** An opening of which nothing is known but its mark. */
export function newOpening(id: string, mark: string): Opening {
  return {
    id,
    mark,
    floorId: null,
    fromSpaceId: null,
    toSpaceId: null,
    facts: {},
    notes: '',
    override: null,
  };
}
