import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { elevation } from '../../exporting/drawing/elevation.ts';
import { drawingSizes } from '../../exporting/drawing/paper.ts';
import { symbolGroups } from '../../exporting/drawing/symbols.ts';
import { DrawingView } from './DrawingView.tsx';
import { Legend } from './Legend.tsx';
import { DeviceSymbol, FailModeSymbol, ReleaseSymbol, StateMark, StatusMark } from './Mark.tsx';

describe('a mark', () => {
  test('always says its word', () => {
    render(
      <>
        <StatusMark status="needsSignOff" />
        <StateMark state="delayed">Delayed 15 s</StateMark>
        <DeviceSymbol device="magnet" />
        <FailModeSymbol failMode="secure" />
        <ReleaseSymbol release="keyInside" />
      </>,
    );
    for (const word of [
      'Needs sign-off',
      'Delayed 15 s',
      'Electromagnetic lock',
      'Fail secure',
      'Keyed from the egress side',
    ]) {
      expect(screen.getByText(word)).toBeVisible();
    }
  });

  test('leaves its word away only as decoration, and is then silent', () => {
    const { container } = render(<StatusMark status="settled" decorative />);
    expect(container).toHaveTextContent('');
    expect(container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
  });
});

describe('the legend', () => {
  test('explains every symbol there is', () => {
    render(<Legend />);
    for (const group of symbolGroups) {
      const list = screen.getByRole('region', { name: `Legend: ${group.title}` });
      expect(within(list).getAllByRole('listitem')).toHaveLength(Object.keys(group.symbols).length);
    }
  });

  test('can be cut down to some groups', () => {
    render(<Legend groups={['failMode']} />);
    expect(screen.getAllByRole('region')).toHaveLength(1);
  });
});

describe('a drawing', () => {
  const facts = { doorType: 'single', leafWidthIn: 36, closing: 'selfClosing' } as const;

  test('has a name and tells in words what it shows and what nobody surveyed', () => {
    render(<DrawingView drawing={elevation(facts, undefined)} caption="101A" />);
    const says = /^Elevation, egress side .*Width 3'-0".*Closer.*Not surveyed: .*Leaf height/;
    expect(screen.getByRole('img', { name: says })).toBeVisible();
    expect(screen.getByText('101A')).toBeVisible();
  });

  test('lists its labels where it carries only numbers', () => {
    render(<DrawingView drawing={elevation(facts, undefined, drawingSizes.phone)} />);
    expect(screen.getAllByRole('listitem').map((item) => item.textContent)).toContain('Closer');
  });
});
