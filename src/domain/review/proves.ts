import { counted } from '../text/counted.ts';
import type { LogCheck } from './verify.ts';

/** Beside the log, so that nobody takes a hash for a signature or a key for a license. */
export const whatTheLogProves: readonly string[] = [
  'Each entry carries a SHA-256 hash of its content and of the entry before it. An entry that was edited, cut out or moved is found and named here.',
  'Hashes alone prove no author: whoever can edit the file can work out new hashes for all of it. Keep a copy of the file, or the printed register with the last hash, where others cannot change it.',
  'With a reviewer’s key an entry is signed as well. Another device checks that signature from the project file. It proves that the holder of that key wrote this entry as it stands.',
  'It does not prove whose key it is. Compare the print of the key with its owner, by phone or in person.',
  'It proves no time either: days and hours are those of the device it was written on.',
  'It replaces no stamp or seal that the law asks of a licensed person, and no approval of the authority having jurisdiction.',
];

/** One line about the log, and what is wrong with it. A log that cannot be checked is not called whole. */
export function logInWords(check: LogCheck | null): {
  says: string;
  problems: readonly string[];
  /** What is said beside the log and makes no entry false. */
  notes: readonly string[];
} {
  if (check === null) {
    return {
      says: 'The log cannot be checked on a page that is not served securely.',
      problems: [],
      notes: [],
    };
  }
  const { entries, clocks: notes } = check;
  const problems = [...check.says, ...entries.flatMap((one) => one.says)];
  if (entries.length === 0 && problems.length === 0)
    return { says: 'No verdict is on file yet.', problems, notes };
  const signed = entries.filter((one) => one.signature === 'valid').length;
  const unsealed = entries.filter((one) => one.seal === 'unsealed').length;
  const last = entries.findLast((one) => one.verdict.hash !== '')?.verdict.hash.slice(0, 16);
  const parts = [
    `${counted(entries.length, 'entry', 'entries')} in the log`,
    problems.length === 0 ? 'as written' : 'not as written',
    ...(signed > 0 ? [`${signed} signed with a key`] : []),
    ...(unsealed > 0 ? [`${unsealed} from an older file without a hash`] : []),
    ...(last === undefined ? [] : [`last hash ${last}…`]),
  ];
  return { says: `${parts.join(', ')}.`, problems, notes };
}
