// "What time did it go on?" "Fourteen eighteen.": two bare numbers are a time where a time was asked after.

/** True for a question that asks when what was last said was done. */
export const asksWhen = (question: string): boolean => ASKS.test(question.trim().toLowerCase());

const ASKS =
  /^(?:(?:and|so|okay|right|now)[ ,]+)*(?:(?:(?:at )?what time|when) (?:did|was|were) (?:it|that|this|they|those|the \w+|you) ?(?:go|put|get|given|done|on|applied|in|start|fit|give|do|placed)?\b|(?:what was|what is|what's) the time on\b)/;
