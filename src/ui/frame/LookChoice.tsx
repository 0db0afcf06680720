import { useEffect, useState } from 'react';
import { useApplication } from '../context.ts';

const looks = { '': 'As the system', light: 'Light', dark: 'Dark', sunlight: 'Sunlight' } as const;
type Look = keyof typeof looks;

/** Paper, ink on black, or black on white with heavy lines for outdoors. */
export function LookChoice() {
  const { preferences } = useApplication();
  const [look, setLook] = useState<Look>(() => {
    const kept = preferences.get('look');
    return Object.hasOwn(looks, kept) ? (kept as Look) : '';
  });
  useEffect(() => {
    if (look === '') document.documentElement.removeAttribute('data-theme');
    else document.documentElement.setAttribute('data-theme', look);
  }, [look]);
  return (
    <select
      className="input look-choice"
      aria-label="Look of the screen"
      value={look}
      onChange={(event) => {
        const chosen = event.target.value as Look;
        preferences.set('look', chosen);
        setLook(chosen);
      }}
    >
      {Object.entries(looks).map(([value, label]) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  );
}
