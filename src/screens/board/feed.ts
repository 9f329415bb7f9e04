// Reads the post's lines as they come, for as long as the board is open; a broken line of communication is dialled again.

import type { FeedLine } from '../../link/index.ts';

export type FeedState = 'connecting' | 'there' | 'cut' | 'refused';

const AGAIN = 1_500;
/** The post says something each second where it has a board; silent this long it is lost, ms. */
const SILENT = 8_000;

/** Calls with each line; gives what ends it. `lively` is false where nothing may be told for long. */
export function readFeed(
  path: string,
  token: string,
  took: (line: FeedLine) => void,
  became: (state: FeedState) => void,
  lively: boolean,
): () => void {
  let over = false;
  let stop = new AbortController();
  const once = async (): Promise<'again' | 'refused'> => {
    stop = new AbortController();
    let last = Date.now();
    const watch = setInterval(() => {
      if (lively && Date.now() - last > SILENT) stop.abort();
    }, 1_000);
    try {
      const response = await fetch(path, {
        headers: { authorization: `Bearer ${token}` },
        signal: stop.signal,
      });
      if (response.status === 401) return 'refused';
      if (!response.ok || response.body === null) return 'again';
      became('there');
      const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
      let rest = '';
      for (;;) {
        const { done, value } = await reader.read();
        if (done) return 'again';
        last = Date.now();
        const lines = `${rest}${value}`.split('\n');
        rest = lines.pop() ?? '';
        for (const line of lines) took(JSON.parse(line) as FeedLine);
      }
    } catch {
      return 'again';
    } finally {
      clearInterval(watch);
    }
  };
  const run = async (): Promise<void> => {
    became('connecting');
    while (!over) {
      if ((await once()) === 'refused') return became('refused');
      if (over) return;
      became('cut');
      await new Promise((resolve) => setTimeout(resolve, AGAIN));
    }
  };
  void run();
  return () => {
    over = true;
    stop.abort();
  };
}

/** Asks the post to do something; gives its answer, or in one sentence why there is none. */
export async function post(
  path: string,
  token: string,
  body: unknown,
): Promise<
  | { readonly kind: 'done'; readonly value: Readonly<Record<string, unknown>> }
  | { readonly kind: 'failed'; readonly why: string }
> {
  try {
    const response = await fetch(path, {
      method: 'POST',
      headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const value = (await response.json()) as Readonly<Record<string, unknown>>;
    return response.ok ? { kind: 'done', value } : { kind: 'failed', why: String(value.why) };
  } catch {
    return { kind: 'failed', why: 'The post cannot be reached.' };
  }
}
