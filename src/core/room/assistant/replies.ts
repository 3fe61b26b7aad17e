/** What an assistant answers to a request that cannot be done. */
export const REPLIES = {
  holdNothing: '“I am not holding the cord.”',
  cordInHand: '“I have the cord in my hand. Say “let go” first.”',
  probeComes: '“I have the probe already.”',
  nothingToLower: '“There is nothing that I could lower.”',
  noTail: '“There is no end of a sheath that I could take.”',
  bedEnd: '“The bed goes no farther.”',
  nothingToTie: '“There is nothing that I could tie now.”',
  noCard: '“I see no card that I could take.”',
  noSpare: '“I have no other packet.”',
  nothingToTake: '“I see nothing that I could take away.”',
} as const;
