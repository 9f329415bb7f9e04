// "Has he had one before?" asks after what none of its words name: its answer is kept beside it.

const OF_BEFORE =
  /\b(has|have|had|did|does|do|was|were|is|are|ever|any)\b.*\b(before|previously|ever|in the past|last time)\b/i;

/** True for a question after what was so before, of something that was told. */
export const asksOfBefore = (text: string): boolean => OF_BEFORE.test(text);
