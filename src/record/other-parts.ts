// "Correction, GCS verbal five": the parts of the coma scale that the correction does not name stay as they were said.

import type { Statement } from '../terms/index.ts';
import type { Entry } from './entry.ts';

/** The statement with the parts that only the corrected reading has; a sum that was said with it goes only where the parts make one. */
export function withOtherParts(statement: Statement, corrected: Entry | undefined): Statement {
  if (statement.kind !== 'vital' || statement.vital !== 'gcs') return statement;
  if (corrected?.kind !== 'vital' || corrected.vital !== 'gcs') return statement;
  if (statement.value.total !== undefined) return statement;
  const { total: before, ...parts } = corrected.value;
  const { eye, verbal, motor } = { ...parts, ...statement.value };
  const said = {
    ...(eye === undefined ? {} : { eye }),
    ...(verbal === undefined ? {} : { verbal }),
    ...(motor === undefined ? {} : { motor }),
  };
  const total =
    typeof eye === 'number' && typeof verbal === 'number' && typeof motor === 'number'
      ? eye + verbal + motor
      : undefined;
  const hadParts = Object.keys(parts).length > 0;
  const kept = total ?? (hadParts ? undefined : before);
  return { ...statement, value: { ...said, ...(kept === undefined ? {} : { total: kept }) } };
}
