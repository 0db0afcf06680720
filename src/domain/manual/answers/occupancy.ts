import { type AnswersTo, standard } from './said.ts';

/** Groups of IBC chapter 3; the figures are those of 2018, 2021 and 2024. From memory of the chapter, not read here. */
export const occupancyAnswers: AnswersTo<'occupancyGroup'> = {
  occupancyGroup: {
    'A-1': standard(
      'Assembly to watch a performance, mostly in fixed seats: theatres, cinemas, concert halls.',
    ),
    'A-2': standard('Assembly to eat and drink: restaurants, bars, banquet halls.'),
    'A-3': standard(
      'Other assembly: worship, libraries, lecture halls, museums, gyms without seats for spectators.',
    ),
    'A-4': standard('Assembly to watch indoor sport: arenas, rinks and pools with seats for spectators.'),
    'A-5': standard('Assembly outdoors: stands, stadiums, amusement parks.'),
    B: standard('Business: offices, banks, outpatient clinics, laboratories, teaching above the 12th grade.'),
    E: standard('Education up to the 12th grade, and day care of more than five children over 2-1/2 years.'),
    'F-1': standard('Factory of moderate hazard: wood, cloth, plastics, vehicles.'),
    'F-2': standard('Factory of low hazard: metal, glass, brick, ice; what is made does not burn.'),
    'H-1': standard('High hazard of detonation: explosives.'),
    'H-2': standard('High hazard of fast burning: flammable gas, combustible dust, open flammable liquids.'),
    'H-3': standard(
      'High hazard of what burns readily: closed flammable liquids, oxidizers, fireworks for sale.',
    ),
    'H-4': standard('High hazard to health: corrosive and toxic materials.'),
    'H-5': standard('Making of semiconductors with hazardous materials.'),
    'I-1.1': standard(
      'More than 16 people living under supervision who can leave without help: assisted living, group homes.',
    ),
    'I-1.2': standard('As I-1 Condition 1, but with people who need some help to leave.'),
    'I-2': standard(
      'Medical care day and night for people who cannot save themselves: hospitals, nursing homes.',
    ),
    'I-3': standard('People held under restraint: prisons, jails, detention.'),
    'I-4': standard('Care for part of the day: small children or adults, more than five of them.'),
    M: standard('Mercantile: shops, markets, sales rooms.'),
    'R-1': standard('Sleeping for short stays: hotels, motels.'),
    'R-2': standard('Sleeping for long stays, more than two units: apartments, dormitories.'),
    'R-3': standard('Houses for one or two families, and small care homes.'),
    'R-4': standard('Homes for more than five and up to 16 people under supervised care.'),
    'S-1': standard('Storage of moderate hazard: goods that burn, repair garages.'),
    'S-2': standard('Storage of low hazard: goods that do not burn; parking garages.'),
    U: standard('Utility: sheds, private garages, towers, fences.'),
  },
};
