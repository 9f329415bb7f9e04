// Says that the open record is damaged, where, and gives the damaged part as a file.

import { damagedFile, readLog } from '../../record/store/index.ts';
import { useTools } from '../frame/tools.ts';
import { download } from './download.ts';

export function DamageNotice() {
  const { desk } = useTools();
  const damage = desk.damage.value;
  if (damage === null || desk.record.value?.facts.id !== damage.record) return null;
  const save = async () => {
    const keys = desk.door.keys();
    if (keys === null) return;
    const { verdict, damaged } = await readLog(desk.shelf, keys, damage.record);
    download(
      `fieldsay-damaged-${damage.record.slice(0, 8)}.json`,
      damagedFile(damage.record, verdict, damaged),
    );
  };
  return (
    <p class="notice trouble">
      <span>{damage.why}</span>{' '}
      <button type="button" class="button" onClick={() => void save()}>
        Save the damaged part
      </button>
    </p>
  );
}
