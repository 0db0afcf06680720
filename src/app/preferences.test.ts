import { expect, test } from 'vitest';
import { createPreferences } from './preferences.ts';

test('a setting is found again at the next visit', () => {
  createPreferences().set('yourName', 'R. Vega');
  expect(createPreferences().get('yourName')).toBe('R. Vega');
  localStorage.clear();
  expect(createPreferences().get('yourName')).toBe('');
});

test('where the browser blocks it, a setting lasts for the visit and nothing breaks', () => {
  const blocked = {
    getItem: () => {
      throw new DOMException('blocked', 'SecurityError');
    },
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  const preferences = createPreferences(blocked);
  expect(preferences.get('yourName')).toBe('');
  preferences.set('yourName', 'R. Vega');
  expect(preferences.get('yourName')).toBe('R. Vega');
});
