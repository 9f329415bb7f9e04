// The reader of talk as the page needs it; it is built later, when the page is already there.

import type { Context } from '../../parse/index.ts';
import type { ReadsTalk } from '../../record/index.ts';

export type TalkReader = ReadsTalk<Context>;
