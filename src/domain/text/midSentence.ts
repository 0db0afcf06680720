/**
 * A label as it stands within a sentence: its first letter is small, unless the word is an abbreviation, a letter of
 * its own (Group B, LH, I-2) or a figure. Labels begin with a capital because they stand alone elsewhere.
 */
export function midSentence(label: string): string {
  return /^(?:\p{Lu}\p{Ll}|A )/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

export function startSentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
