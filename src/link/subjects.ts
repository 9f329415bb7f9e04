// The subjects of the link: who may say what is read from them alone, since the server sees nothing else.

/** What incidents and devices are called on the wire. */
export const NAME = /^[a-z0-9][a-z0-9-]{0,31}$/;

/** What the post's own servers call themselves; any other name that stores a message is a vehicle's. */
export const POST_DOMAIN = 'command-post';
/** The stream that keeps the messages of all records. */
export const STREAM = 'RECORDS';
/** What the stream takes in. */
export const STREAM_SUBJECTS = 'rec.*.*.*';

/** One event of a device's log; the server keeps one message for each of these for ever. */
export const recordSubject = (incident: string, device: string, seq: number): string =>
  `rec.${incident}.${device}.${seq}`;
/** A device asks the post what it has; the post answers with its word. */
export const askSubject = (incident: string, device: string): string => `ask.${incident}.${device}`;
/** The post's word to a device. */
export const wordSubject = (incident: string, device: string): string => `got.${incident}.${device}`;
/** One device hands a record to another: the receiver's name comes first. */
export const passSubject = (incident: string, to: string, from: string): string =>
  `pass.${incident}.${to}.${from}`;
/** Answers come to a device under this prefix and to no other. */
export const inboxOf = (device: string): string => `inbox.${device}`;

export interface RecordPlace {
  readonly incident: string;
  readonly device: string;
  /** counts from 1 on each device */
  readonly seq: number;
}

/** The parts of a record subject, or null. */
export function readRecordSubject(subject: string): RecordPlace | null {
  const [kind, incident = '', device = '', number = '', more] = subject.split('.');
  if (kind !== 'rec' || more !== undefined || !NAME.test(incident) || !NAME.test(device)) return null;
  const seq = /^[1-9]\d{0,9}$/.test(number) ? Number(number) : 0;
  return seq === 0 ? null : { incident, device, seq };
}

/** What a device may publish: as itself and as nobody else. */
export const mayPublish = (incident: string, device: string): readonly string[] => [
  `rec.${incident}.${device}.*`,
  askSubject(incident, device),
  passSubject(incident, '*', device),
];

/** What a device may hear: the post's word to it, what is handed to it, and answers to its own questions. */
export const mayHear = (incident: string, device: string): readonly string[] => [
  wordSubject(incident, device),
  passSubject(incident, device, '*'),
  `${inboxOf(device)}.>`,
];
