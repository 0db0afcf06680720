/** A length as it is lettered on a drawing: 3'-0", 2'-11 3/4", 8". */
export function feetInches(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  const feet = Math.floor(sixteenths / 192);
  const rest = sixteenths - feet * 192;
  const whole = Math.floor(rest / 16);
  const part = fraction(rest % 16);
  const inchText = part === '' ? `${whole}` : whole === 0 && feet === 0 ? part : `${whole} ${part}`;
  return feet === 0 ? `${inchText}"` : `${feet}'-${inchText}"`;
}

function fraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let [above, below] = [sixteenths, 16];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  return `${above}/${below}`;
}

/** Breaks words into lines of at most so many letters; a single longer word keeps its line. */
export function wrap(text: string, letters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
