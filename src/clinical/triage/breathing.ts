// The criterion of respiratory distress, from how breathing was described and what was done for it.

import { type Answer, no, unknown, yes } from '../answer.ts';
import { type Chart, vitalsOf } from '../chart.ts';
import { mentionOf } from '../told/mention.ts';

const DISTRESSED =
  /\b(?:labou?red|distress\w*|gasping|agonal|struggling|apn(?:o)?e(?:ic|a)|accessory|retractions|assisted)\b/i;
const EASY = /\b(?:unlabou?red|not labou?red|easy|effortless|normal|comfortable)\b/i;

/** Respiratory distress, or breathing that is being supported. */
export function respiratoryDistress(chart: Chart): Answer {
  const breathing = vitalsOf(chart, 'respirations');
  const words = (entry: (typeof breathing)[number]): string => (entry.value.quality ?? []).join(' ');
  const laboured = breathing.filter(
    (entry) => (DISTRESSED.test(words(entry)) && !EASY.test(words(entry))) || entry.value.rate === 0,
  );
  const supported = chart.care.filter((entry) => entry.care === 'cpr');
  if (laboured.length > 0 || supported.length > 0)
    return yes([...laboured, ...supported], laboured.map(words).join(', ') || 'breathing supported');
  const told = mentionOf(
    chart,
    ['chief-complaint', 'symptoms', 'events'],
    /\b(?:short(?:ness)? of breath|trouble breathing|difficulty breathing|can't breathe|breathless)\b/,
  );
  const helped = mentionOf(
    chart,
    ['events'],
    /\b(?:bag(?:ging|ged)|bag[- ]valve|b ?v ?m|assist\w* (?:ventilation|breath|respiration)\w*|ventilat(?:ed|ing|ions?)|intubat\w*|not breathing|stopped breathing)\b/,
  );
  const opened = chart.care.filter((entry) => entry.care === 'airway-opened');
  const open = [...told.said, ...told.hinted, ...helped.said, ...helped.hinted, ...opened];
  const question = ['whether breathing is laboured or needs support'];
  if (open.length > 0) return unknown(question, open);
  const easy = breathing.filter((entry) => EASY.test(words(entry)));
  return easy.length > 0 ? no(easy, 'breathing easy') : unknown(question);
}
