// The browser's recognition is kept going and believed with care. It is a fake that plays known faults; all talk is invented.

import { describe, expect, it } from 'vitest';
import { faultOf, recognitionIn } from '../../src/speech/browser/index.ts';
import { arranged, event } from './fake-recognition.ts';

describe('a settled result', () => {
  it('is taken once, however often it is given again', () => {
    const { begin, latest, texts } = arranged();
    begin();
    latest().onresult?.(event([['left knee', false]]));
    latest().onresult?.(event([['left knee swelling', true]]));
    latest().onresult?.(
      event([
        ['left knee swelling', true],
        ['no', false],
      ]),
    );
    latest().onresult?.(event([['Left knee swelling.', true]]));
    expect(texts()).toEqual(['left knee swelling']);
  });

  it('that is settled again with more words gives the new words only', () => {
    const { begin, latest, texts } = arranged();
    begin();
    latest().onresult?.(event([['left knee', true]]));
    latest().onresult?.(event([['left knee swelling', true]]));
    expect(texts()).toEqual(['left knee', 'swelling']);
  });

  it('that is settled again as other words loses neither', () => {
    const { begin, latest, texts } = arranged();
    begin();
    latest().onresult?.(event([['left knee', true]]));
    latest().onresult?.(event([['left heel', true]]));
    expect(texts()).toEqual(['left knee', 'left heel']);
  });

  it('that grows from place to place, as on Android, gives each word once', () => {
    const { begin, latest, texts } = arranged({ grows: true });
    begin();
    latest().onresult?.(event([['left', true]]));
    latest().onresult?.(
      event(
        [
          ['left', true],
          ['left knee', true],
        ],
        1,
      ),
    );
    latest().onresult?.(
      event(
        [
          ['left', true],
          ['left knee', true],
          ['left knee swelling', true],
        ],
        2,
      ),
    );
    expect(texts()).toEqual(['left', 'knee', 'swelling']);
  });

  it('that is replayed at the start of the next session is dropped there', () => {
    const { begin, latest, texts, pass } = arranged({ grows: true });
    begin();
    latest().onresult?.(event([['right wrist tender', true]]));
    latest().onend?.();
    pass(250);
    latest().onstart?.();
    latest().onresult?.(event([['right wrist tender', true]]));
    expect(texts()).toEqual(['right wrist tender']);
  });

  it('said again by a person is taken again', () => {
    const { begin, latest, texts, pass } = arranged({ grows: true });
    begin();
    latest().onresult?.(event([['no', true]]));
    pass(4000);
    latest().onresult?.(
      event(
        [
          ['no', true],
          ['no', true],
        ],
        1,
      ),
    );
    expect(texts()).toEqual(['no', 'no']);
  });

  it('that merely begins like the one before is whole where the browser does not grow them', () => {
    const { begin, latest, texts } = arranged();
    begin();
    latest().onresult?.(event([['no pain', true]]));
    latest().onresult?.(
      event(
        [
          ['no pain', true],
          ['no pain in the left arm', true],
        ],
        1,
      ),
    );
    expect(texts()).toEqual(['no pain', 'no pain in the left arm']);
  });

  it('brings its alternatives', () => {
    const { begin, latest, heard } = arranged();
    begin();
    latest().onresult?.(event([['left new', true, 'left knee']]));
    expect(heard[0]?.alternatives).toEqual(['left knee']);
  });
});

describe('words that were shown and never settled', () => {
  it.each(['the session ends', 'a person stops'] as const)('are kept when %s', (how) => {
    const { begin, latest, texts, recogniser, unsettled } = arranged();
    begin();
    latest().onresult?.(event([['right ankle swelling', false]]));
    expect(unsettled()).toBe('right ankle swelling');
    if (how === 'a person stops') recogniser.stop();
    else latest().onend?.();
    expect(texts()).toEqual(['right ankle swelling']);
    expect(unsettled()).toBe('');
  });
});

describe('a session', () => {
  it('is begun again only when the one before has ended', () => {
    const { begin, latest, sessions, pass } = arranged();
    begin();
    latest().onerror?.({ error: 'no-speech' });
    pass(2000);
    expect(sessions).toHaveLength(1);
    latest().onend?.();
    pass(500);
    expect(sessions).toHaveLength(2);
  });

  it('is renewed on a pause before it stalls, and not while somebody speaks', () => {
    const { begin, latest, pass } = arranged();
    begin();
    for (let second = 0; second < 50; second += 5) {
      latest().onresult?.(event([['and then', false]]));
      pass(5000);
    }
    expect(latest().asked).toEqual(['start']);
    latest().onresult?.(event([['and then', true]]));
    pass(2000);
    expect(latest().asked).toEqual(['start', 'stop']);
  });

  it('that stalls is ended, and left behind when its end never comes', () => {
    const { begin, sessions, latest, pass, texts } = arranged();
    begin();
    pass(31_000);
    expect(latest().asked).toEqual(['start', 'abort']);
    pass(4000);
    expect(sessions).toHaveLength(2);
    sessions[0]?.onresult?.(event([['from the dead', true]]));
    sessions[0]?.onend?.();
    pass(500);
    expect(texts()).toEqual([]);
    expect(sessions).toHaveLength(2);
  });

  it('that ends at once again and again is begun ever more seldom', () => {
    const { begin, latest, sessions, pass } = arranged();
    begin();
    const begun: number[] = [];
    for (let round = 0; round < 6; round++) {
      latest().onend?.();
      const before = sessions.length;
      let waited = 0;
      while (sessions.length === before && waited < 60_000) {
        pass(250);
        waited += 250;
      }
      begun.push(waited);
      latest().onstart?.();
    }
    expect(begun).toEqual(begun.toSorted((one, other) => one - other));
    expect(begun.at(-1)).toBeGreaterThan(4000);
  });

  it('that cannot be started is tried again', () => {
    const { recogniser, sessions, pass } = arranged({ refusesStart: true });
    recogniser.start();
    pass(3000);
    expect(sessions.length).toBeGreaterThan(1);
  });
});

describe('an error', () => {
  it.each(['not-allowed', 'service-not-allowed', 'language-not-supported'])(
    '%s stops it and says why',
    (error) => {
      const { begin, latest, state, pass, sessions } = arranged();
      begin();
      latest().onerror?.({ error });
      expect(state()).toEqual({ state: 'stopped', why: faultOf(error)?.why });
      pass(30_000);
      expect(sessions).toHaveLength(1);
    },
  );

  it.each(['network', 'audio-capture', 'something-new'])('%s is said, and it goes on by itself', (error) => {
    const { begin, latest, state, pass, gaps } = arranged();
    begin();
    latest().onerror?.({ error });
    latest().onend?.();
    expect(state()).toMatchObject({ state: 'deaf' });
    pass(10_000);
    latest().onstart?.();
    expect(state()).toEqual({ state: 'hearing' });
    expect(gaps).toHaveLength(1);
  });

  it('phrases-not-supported is passed on, and it goes on without them', () => {
    const { begin, latest, state, pass, sessions, refusals } = arranged();
    begin();
    latest().onerror?.({ error: 'phrases-not-supported' });
    latest().onend?.();
    expect(refusals()).toBe(1);
    pass(500);
    latest().onstart?.();
    expect(sessions).toHaveLength(2);
    expect(state()).toEqual({ state: 'hearing' });
  });

  it.each(['no-speech', 'aborted'])('%s is none', (error) => expect(faultOf(error)).toBeNull());
});

describe('while the page speaks', () => {
  it('there is no session, and what comes late is not heard', () => {
    const { begin, recogniser, latest, texts, pass, sessions } = arranged();
    begin();
    recogniser.deaf(true);
    expect(latest().asked).toEqual(['start', 'abort']);
    latest().onresult?.(event([['the page itself', true]]));
    latest().onend?.();
    pass(5000);
    expect(sessions).toHaveLength(1);
    recogniser.deaf(false);
    pass(500);
    expect(sessions).toHaveLength(2);
    expect(texts()).toEqual([]);
  });
});

describe('a browser without recognition', () => {
  it('has none', () => expect(recognitionIn({})).toBeNull());
});
