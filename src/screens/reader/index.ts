// Promises a report that can be read over the radio piece by piece, held against what comes back, and kept as it was sent.

export { Reader } from './Reader.tsx';

import './reader.css';
