/**
 * What each action is called in the ledger: with the body, that is how a repeat is known. Code may be renamed, a name here never
 * is, and none is used for two actions.
 */
export const VERBS = {
  receive: 'a delivery taken in',
  importList: 'a list made real',
  pick: 'pieces taken out of a bag',
  returnToBag: 'pieces put back into a bag',
  count: 'a bag counted',
  setAside: 'what became of a bag',
  arrangeBoxes: 'the boxes put into their order',
  undo: 'an act taken back',
  keepDraft: 'a draft kept',
  saveBoard: 'a BOM kept',
  choose: 'a bag chosen for a demand',
  fitLater: 'a demand left off for now, or fitted again',
  planBuild: 'a build kept without a promise',
  reserveKit: 'a plan taken',
  reserveBom: 'a BOM planned, and the plan taken',
  reservePlanned: 'a planned build promised what it gets',
  pickForBuild: 'a kit picked',
  finishBuild: 'boards soldered',
  returnLeftovers: 'what was left over brought back',
  cancelBuild: 'a build given up',
} as const;

export type Verb = keyof typeof VERBS;
