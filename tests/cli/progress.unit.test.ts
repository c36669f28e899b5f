import { describe, expect, it } from 'vitest';
import { progressLine, progressText } from '../../src/cli/progress.ts';
import { file, lapwright, mastProject } from './lapwright.ts';

const CLEAR = '\r\u001B[K';

/** A screen whose lines are kept, with a clock that the test moves. */
function open(columns = 80) {
  const written: string[] = [];
  let time = 1000;
  const line = progressLine(
    { write: (text) => written.push(text), columns: () => columns },
    () => time,
  );
  return {
    ...line,
    written,
    wait(ms: number) {
      time += ms;
    },
  };
}

describe('the line of progress', () => {
  it('is not drawn for what is soon done', () => {
    const { show, end, written, wait } = open();
    for (const ms of [0, 100, 200, 99]) {
      wait(ms);
      show(1, 4, 'Boom tip');
    }
    end();
    expect(written).toEqual([]);
  });

  it('shows the share, the time left and what is being done, and is gone at the end', () => {
    const { show, end, written, wait } = open();
    wait(10_000);
    show(1, 4, 'Boom tip');
    expect(written).toEqual([`${CLEAR}██████░░░░░░░░░░░░░░░░░░   25 %  about 30 s left  Boom tip`]);
    end();
    end();
    expect(written.slice(1)).toEqual([CLEAR]);
  });

  it('is drawn at most ten times a second, and only when something changed', () => {
    const { show, written, wait } = open();
    wait(1000);
    for (let ms = 0; ms < 1000; ms += 10) {
      show(ms, 1000);
      wait(10);
    }
    expect(written).toHaveLength(10);
    wait(1000);
    show(0, 0, 'x');
    wait(1000);
    show(0, 0, 'x');
    expect(written).toHaveLength(11);
  });

  it('never breaks at the edge of the screen', () => {
    const { show, written, wait } = open(40);
    wait(1000);
    show(0, 9, 'a joint with a very long name');
    expect(written[0]!.slice(CLEAR.length)).toHaveLength(39);
    const asian = open(40);
    asian.wait(1000);
    asian.show(0, 9, '接着接着接着接着');
    // Each of them is two characters wide.
    expect(asian.written[0]!.slice(CLEAR.length)).toHaveLength(36);
  });

  it('obeys nothing in a name', () => {
    expect(progressText(1, 2, 'a\u001B[2Jb\n', null)).toMatch(/a\uFFFD\[2Jb\uFFFD$/);
  });

  it('leaves out what is not known', () => {
    expect(progressText(0, 0, '', null).trimEnd()).toBe('░'.repeat(24));
  });

  it('is nothing where nobody looks', () => {
    const { show, end } = progressLine(null);
    expect(() => {
      show(1, 2);
      end();
    }).not.toThrow();
  });
});

describe('commands', () => {
  const path = () => file('mast.json', mastProject());

  it('write nothing to a stderr that is no screen, and the same JSON as ever', async () => {
    const quiet = await lapwright(['check', path(), '--json']);
    expect(quiet.err).toBe('');
    const seen = await lapwright(['check', path(), '--json'], { errIsTTY: true, columns: 80 });
    expect(seen.out).toBe(quiet.out);
    // Whatever was drawn, it is gone.
    expect(seen.err === '' || seen.err.endsWith(CLEAR)).toBe(true);
  });

  it('end with 130 and nothing said when they are interrupted', async () => {
    const ran = await lapwright(['check', path()], {
      onInterrupt(stop) {
        stop();
        return () => undefined;
      },
    });
    expect(ran).toEqual({ code: 130, out: '', err: '' });
  });

  it('listen for Ctrl+C only while something long runs', async () => {
    const heard: string[] = [];
    const onInterrupt = () => {
      heard.push('on');
      return () => void heard.push('off');
    };
    await lapwright(['demo'], { onInterrupt });
    expect(heard).toEqual([]);
    await lapwright(['check', path()], { onInterrupt });
    expect(heard).toEqual(['on', 'off']);
  });
});
