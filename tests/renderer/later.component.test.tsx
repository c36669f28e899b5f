import { render, screen, within } from '@solidjs/testing-library';
import { createSignal, type JSX } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { later } from '../../src/renderer/parts/later.tsx';

const Greeting = (props: { readonly to: string }): JSX.Element => <p>Hello {props.to}</p>;

describe('a part that comes later', () => {
  it('says that it opens, then is drawn, and goes on with its properties', async () => {
    let bring!: () => void;
    const loads = new Promise<void>((resolve) => {
      bring = resolve;
    });
    const Part = later(async () => {
      await loads;
      return Greeting;
    });
    const [to, setTo] = createSignal('boom');
    render(() => <Part to={to()} />);
    expect(screen.getByText('Opening …')).toBeTruthy();
    bring();
    expect(await screen.findByText('Hello boom')).toBeTruthy();
    setTo('leg');
    expect(screen.getByText('Hello leg')).toBeTruthy();
    expect(screen.queryByText('Opening …')).toBeNull();
  });

  it('is drawn at once when it was fetched before, and fetched once', async () => {
    let loads = 0;
    const Part = later(async () => {
      loads++;
      return Greeting;
    });
    await Promise.all([Part.fetch(), Part.fetch()]);
    render(() => (
      <>
        <Part to="root" />
        <Part to="tip" />
      </>
    ));
    expect(screen.getByText('Hello root')).toBeTruthy();
    expect(screen.getByText('Hello tip')).toBeTruthy();
    expect(loads).toBe(1);
  });

  it('says so when it does not come, and is not asked for over and over', async () => {
    let loads = 0;
    const Part = later<{ readonly to: string }>(async () => {
      loads++;
      throw new TypeError('the host is away');
    });
    await Part.fetch();
    render(() => <Part to="strut" />);
    const notice = await screen.findByRole('alert');
    expect(notice.textContent).toContain('could not be loaded');
    expect(within(notice).getByRole('button', { name: 'Load again' })).toBeTruthy();
    expect(loads).toBe(1);
  });
});
