// Wipes everything this page keeps, after it was typed; then nothing is left to be shown.

import { wipeEverything } from '../../record/store/index.ts';
import { useTools } from '../frame/tools.ts';
import { stopListening } from '../listen/any-ear.ts';
import { TypedConfirm } from './TypedConfirm.tsx';

export function WipeAll() {
  const tools = useTools();
  const { desk, pages, player } = tools;
  const wipe = async () => {
    player.stop();
    await stopListening(tools);
    await desk.keeper.settled();
    pages.value?.tell({ told: 'wiped' });
    const left = await wipeEverything();
    desk.record.value = null;
    const words =
      left.length === 0
        ? 'Everything was wiped: records, keys, settings and the page kept for use without a network. With a network, load it again.'
        : `Not everything could be wiped. Left: ${left.join('; ')}.`;
    // The page stops here: anything it still did would keep something again.
    document.body.replaceChildren(
      Object.assign(document.createElement('p'), { textContent: words, className: 'lock' }),
    );
  };
  return (
    <section aria-labelledby="wipe-all" class="part">
      <h3 id="wipe-all">Wipe everything</h3>
      <TypedConfirm
        title="Wipe everything"
        word="wipe everything"
        what="Every record, key and setting of this page is removed from this device, and the page itself. Nothing brings them back."
        act={wipe}
      />
    </section>
  );
}
