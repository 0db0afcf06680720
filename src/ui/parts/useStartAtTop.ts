import { type RefObject, useEffect, useRef } from 'react';

/**
 * For the heading of a page that shows one opening: when another one comes up, the page begins at its top, and a
 * focus that went away with the last one goes to the heading.
 */
export function useStartAtTop(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.documentElement.scrollTop = 0;
    const { activeElement } = document;
    if (activeElement === null || activeElement === document.body) {
      heading.current?.focus({ preventScroll: true });
    }
  }, []);
  return heading;
}
