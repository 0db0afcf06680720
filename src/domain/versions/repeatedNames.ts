/** A name that stands twice in one object of a JSON text, with the earlier entry, which parsing drops in silence. */
export interface RepeatedName {
  readonly path: readonly string[];
  readonly dropped: string;
}

interface Frame {
  /** Where the value of each name begins and ends; undefined in a list. */
  readonly spans: Map<string, readonly [number, number]> | undefined;
  name: string;
  count: number;
  valueStart: number;
}

/**
 * Walks over a text that is known to be JSON. The last of two entries wins when it is parsed, so the earlier one is
 * handed back. Nothing here calls itself: the depth of a file is whatever its writer made it.
 */
export function repeatedNames(text: string): readonly RepeatedName[] {
  const found: RepeatedName[] = [];
  const frames: Frame[] = [];
  const signs = /["{}[\],:]/g;
  let top: Frame | undefined;
  let awaitsName = false;
  for (let sign = signs.exec(text); sign; sign = signs.exec(text)) {
    const at = sign.index;
    switch (sign[0]) {
      case '"': {
        const end = endOfString(text, at);
        if (awaitsName && top) {
          top.name = JSON.parse(text.slice(at, end)) as string;
          awaitsName = false;
        }
        signs.lastIndex = end;
        break;
      }
      case ':':
        if (top) top.valueStart = at + 1;
        break;
      case '{':
      case '[':
        top = {
          spans: sign[0] === '{' ? new Map() : undefined,
          name: '',
          count: 0,
          valueStart: at + 1,
        };
        frames.push(top);
        awaitsName = sign[0] === '{';
        break;
      default: {
        if (top?.spans && !(sign[0] === '}' && awaitsName)) close(top, at);
        if (sign[0] === ',') {
          awaitsName = top?.spans !== undefined;
          if (top) top.count += 1;
        } else {
          frames.pop();
          top = frames.at(-1);
          awaitsName = false;
        }
      }
    }
  }
  return found;

  function close(frame: Frame, end: number): void {
    const before = frame.spans?.get(frame.name);
    if (before) {
      const path = frames.map((one) => (one.spans ? one.name : String(one.count + 1)));
      found.push({ path, dropped: text.slice(...before).trim() });
    }
    frame.spans?.set(frame.name, [frame.valueStart, end]);
  }
}

/** The place behind the closing quote. */
function endOfString(text: string, start: number): number {
  let at = start;
  for (;;) {
    at = text.indexOf('"', at + 1);
    if (at < 0) return text.length;
    let slashes = 0;
    while (text[at - 1 - slashes] === '\\') slashes += 1;
    if (slashes % 2 === 0) return at + 1;
  }
}
