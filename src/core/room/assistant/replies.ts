/** What an assistant answers to a request that cannot be done. */
export const REPLIES = {
  holdNothing: '“I am not holding the cord.”',
  cordInHand: '“I have the cord in my hand. Say “let go” first.”',
  nothingToTake: '“I see nothing that I could take away.”',
} as const;
