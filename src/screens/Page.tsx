// The whole page: head, notices, the panels that fit beside each other, the foot, and at most one sheet over them.

import { ChangeSheet } from './entries/ChangeSheet.tsx';
import { Cautions } from './frame/Cautions.tsx';
import { Foot } from './frame/Foot.tsx';
import { Header } from './frame/Header.tsx';
import { More } from './frame/More.tsx';
import { Notices, StandingNotices } from './frame/Notices.tsx';
import { PANEL_NAMES, PANELS, shown } from './frame/panels.ts';
import { Sheet } from './frame/Sheet.tsx';
import { useTools } from './frame/tools.ts';
import { LinkSheet } from './link/LinkSheet.tsx';
import { HearingSheet } from './listen/HearingSheet.tsx';
import { Banner } from './play/Banner.tsx';
import { Ready } from './ready/Ready.tsx';
import { Records } from './records/Records.tsx';
import { OpenWay } from './report/OpenWay.tsx';
import { LastSaid } from './talk/LastSaid.tsx';
import { Talk } from './talk/Talk.tsx';

export function Page() {
  const { panel, columns, later } = useTools();
  const now = shown(panel.value, columns.value);
  // The talk panel stays even where it is not shown, so that a line half typed is not lost.
  const panels = PANELS.filter((one) => one === 'talk' || now.includes(one));
  return (
    <div class="page">
      <Header />
      <Banner />
      <StandingNotices />
      <Notices />
      <main class={`panels columns-${now.length}`}>
        {panels.map((one) => {
          const View = one === 'talk' ? Talk : (later.value?.views[one] ?? Waiting);
          return (
            <section
              key={one}
              class={`panel panel-${one}`}
              aria-labelledby={`panel-${one}`}
              hidden={!now.includes(one)}
              // A panel scrolls by itself, and so must be reachable with the keyboard alone.
              // biome-ignore lint/a11y/noNoninteractiveTabindex: scrollable region
              tabIndex={0}
            >
              <h2 id={`panel-${one}`}>{PANEL_NAMES[one]}</h2>
              <View />
            </section>
          );
        })}
      </main>
      <Foot />
      <LastSaid />
      <Sheets />
    </div>
  );
}

const Waiting = () => <p class="empty">Getting ready …</p>;

function Sheets() {
  const { sheet, changing, way, later } = useTools();
  const close = () => {
    sheet.value = null;
  };
  switch (sheet.value) {
    case 'cautions':
      return <Cautions close={close} />;
    case 'records':
      return <Records close={close} />;
    case 'ready':
      return <Ready close={close} />;
    case 'hearing':
      return <HearingSheet close={close} />;
    case 'link':
      return <LinkSheet close={close} />;
    case 'words':
      return later.value === null ? (
        <Sheet title="What can I say?" close={close}>
          <Waiting />
        </Sheet>
      ) : (
        <later.value.Words close={close} />
      );
    case 'more':
      return <More close={close} />;
    case null:
      if (way.value !== null) return <OpenWay key={way.value} name={way.value} />;
      return changing.value === null ? null : <ChangeSheet key={changing.value} id={changing.value} />;
  }
}
