// The incident that this device is in, sealed on its disk like the records: whoever cannot read them cannot send as it.

import {
  base64url,
  fromBase64url,
  type Got,
  type JoinCode,
  type Ledger,
  type Row,
} from '../../../link/index.ts';
import {
  type Keys,
  linkKey,
  placeOf,
  type RecordFacts,
  type Shelf,
  seal,
  unseal,
} from '../../../record/store/index.ts';

export interface Member {
  readonly code: JoinCode;
  /** names this browser, so that two that use one code are noticed */
  readonly install: string;
  /** ISO 8601: records begun after it are sent */
  readonly joinedAt: string;
  /** older records that are sent as well */
  readonly shared: readonly string[];
}

/** Whether a record is of the incident. */
export const isShared = (
  { joinedAt, shared }: Pick<Member, 'joinedAt' | 'shared'>,
  facts: Pick<RecordFacts, 'id' | 'kind' | 'startedAt'>,
): boolean =>
  facts.kind === 'live' && (Date.parse(facts.startedAt) >= Date.parse(joinedAt) || shared.includes(facts.id));

const put = async (shelf: Shelf, keys: Keys, key: ReturnType<typeof linkKey>, value: unknown) =>
  shelf.write({ put: [{ key, value: await seal(keys, placeOf(key), value) }] });

async function get(shelf: Shelf, keys: Keys, key: ReturnType<typeof linkKey>): Promise<unknown> {
  const opened = await unseal(keys, placeOf(key), await shelf.get(key));
  return opened.kind === 'value' ? opened.value : null;
}

/** The incident, or null where there is none or it cannot be read. */
export async function readMember(shelf: Shelf, keys: Keys): Promise<Member | null> {
  const kept = (await get(shelf, keys, linkKey('member'))) as
    | (Omit<Member, 'code'> & { readonly code: Omit<JoinCode, 'key'> & { readonly key: string } })
    | null;
  const key = kept === null ? null : fromBase64url(kept.code.key);
  return kept === null || key === null ? null : { ...kept, code: { ...kept.code, key } };
}

export const keepMember = (shelf: Shelf, keys: Keys, { code, ...member }: Member): Promise<void> =>
  put(shelf, keys, linkKey('member'), { ...member, code: { ...code, key: base64url(code.key) } });

/** Forgets the incident and the book of what was sent; the records stay. */
export const forgetMember = (shelf: Shelf): Promise<void> => shelf.write({ removeUnder: [['link']] });

/** The book of what was sent, on this device's disk; a row is there whole before any of it is sent. */
export function ledgerOn(shelf: Shelf, keys: () => Keys | null, install: string): Ledger {
  const need = (): Keys => {
    const now = keys();
    if (now === null) throw new Error('the page is locked');
    return now;
  };
  return {
    load: async () => {
      const placed = await shelf.under(['link', 'row']);
      const rows = await Promise.all(
        placed.map(async ({ key, value }) => {
          const opened = await unseal(need(), placeOf(key), value);
          // A row that cannot be read would give its numbers to other events: nothing may be sent then.
          if (opened.kind !== 'value') throw new Error('the list of what was sent cannot be read');
          return opened.value as Row;
        }),
      );
      const got = (await get(shelf, need(), linkKey('got'))) as Got | null;
      return { install, rows, got };
    },
    add: async (row) => {
      const key = linkKey('row', row.from);
      await shelf.write({ add: [{ key, value: await seal(need(), placeOf(key), row) }] });
    },
    keepGot: (got) => put(shelf, need(), linkKey('got'), got),
  };
}
