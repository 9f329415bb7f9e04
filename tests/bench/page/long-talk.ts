// An invented talk of one finding a line; every place is spoken of again and again.

const SITES = ['forearm', 'knee', 'wrist', 'ankle', 'shoulder', 'thigh', 'hand', 'foot', 'elbow', 'hip'];
const FINDINGS = ['swelling', 'deformity', 'tenderness', 'bleeding', 'laceration'];

/** A talk file of so many lines. */
export function longTalk(many: number): string {
  const lines = Array.from({ length: many }, (_, index) => {
    const side = index % 2 === 0 ? 'left' : 'right';
    const no = index % 3 === 0 ? 'no ' : '';
    return `${no}${FINDINGS[index % FINDINGS.length]} of the ${side} ${SITES[index % SITES.length]}`;
  });
  return `@start 2031-04-05T10:00:00+02:00\n${lines.join('\n')}\n`;
}
