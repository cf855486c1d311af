import type { ReadRow } from '#core/bom/bom.ts';
import type { Plan } from '#core/kit/kit.ts';
import type { Part } from '#core/part/part.ts';
import type { BagUnit, Box, Holder } from '#core/stock/stock.ts';
import type { Done } from './action.ts';

/** What every act carries: an id from the caller, so that a repeat is harmless. */
export interface ActInput {
  /** any UUID; the same id with another body is refused */
  readonly id: string;
  /** UTC instant of the deed in the world; the clock's now where it is left out */
  readonly happenedAt?: string;
  readonly note?: string;
}

/** What a bag holds after an act. */
export interface BagBalance {
  readonly bag: number;
  readonly onHand: number;
  readonly sure: number;
  readonly free: number;
}

export interface LotInput {
  readonly supplier?: string;
  /** plain date, YYYY-MM-DD; the day of the act where it is left out */
  readonly received?: string;
  readonly dateCode?: string;
  /** what the supplier printed on the original label */
  readonly label?: string;
  /** as paid: micro-units of an ISO 4217 currency for so many pieces */
  readonly price?: { readonly micros: number; readonly currency: string; readonly pieces: number };
}

/** One bag of a delivery: into a bag that is there, or a new one with this part. */
export interface ReceivedItem {
  readonly quantity: number;
  /** how many of them are sure (0 for "a reel", "about 50"); all where it is left out */
  readonly sure?: number;
  /** number of a live bag to add to, or the number wanted for a new bag; the next free number where it is left out */
  readonly bag?: number;
  /** for a new bag; a bag that is there keeps its part */
  readonly part?: Part;
  /** a bag of its own: a number that a bag has already is refused, even with the same part */
  readonly fresh?: boolean;
  readonly holder?: Holder;
  readonly unit?: BagUnit;
  readonly box?: string;
  readonly place?: string;
  readonly state?: 'sound' | 'salvaged' | 'mixed' | 'expired';
  readonly lot?: LotInput;
}

export interface ReceiveInput extends ActInput {
  readonly items: readonly ReceivedItem[];
}
export interface ReceiveResult extends Done {
  readonly bags: readonly BagBalance[];
}

export interface ImportInput extends ActInput {
  readonly rows: readonly ReadRow[];
  /** name of the list, kept as the note of the act */
  readonly source: string;
  /** box for all bags of the list */
  readonly box?: string;
  readonly boxPlaces?: number;
}
export interface ImportResult extends Done {
  readonly bags: number;
  readonly parts: number;
  readonly pieces: number;
  /** least and greatest number given */
  readonly first: number;
  readonly last: number;
  /** bags made empty and put on the count list, since the list gives no whole quantity */
  readonly toCount: readonly number[];
  /** rows that became no bag, since they are not a part */
  readonly skipped: readonly number[];
  /** what to write on which bag: those with doubts first, at most so many; left out by acts of old */
  readonly made?: readonly MadeBag[];
}

/** A bag that a list made, and what is to be written on it. */
export interface MadeBag {
  readonly row: number;
  readonly bag: number;
  readonly name: string;
  readonly box: string | null;
  readonly place: string | null;
  /** the list gave no number: it is to be written on the bag */
  readonly numbered: boolean;
  readonly doubts: number;
}

export interface PickInput extends ActInput {
  readonly bag: number;
  readonly quantity: number;
  /** "I have them in my hand": books the pick and a correction where the record says less */
  readonly inHand?: boolean;
}
export interface PickResult extends Done, BagBalance {
  readonly quantity: number;
  /** pieces that the correction added before the pick; 0 without one */
  readonly corrected: number;
}

export interface ReturnInput extends ActInput {
  readonly bag: number;
  readonly quantity: number;
}
export interface ReturnResult extends Done, BagBalance {
  readonly quantity: number;
}

export interface CountInput extends ActInput {
  readonly bag: number;
  /** what was seen in the bag, by hand or by weight */
  readonly total: number;
  /** last movement that the person's screen knew (`seq` of the bag's history); the newest one where it is left out */
  readonly sawSeq?: number;
}
export interface CountResult extends Done, BagBalance {
  readonly total: number;
  readonly difference: number;
}

export interface UndoInput extends ActInput {
  readonly act: string;
}
export interface UndoResult extends Done {
  readonly undoes: string;
  readonly kind: ActKind;
  readonly bags: readonly BagBalance[];
}

export interface SetAsideInput extends ActInput {
  readonly bag: number;
  /** astray: looked for and not found; sound: it turned up again */
  readonly state: 'astray' | 'sound' | 'salvaged' | 'mixed' | 'expired';
}
export interface SetAsideResult extends Done, BagBalance {
  readonly state: string;
  readonly before: string;
}

/** Puts the boxes into the order in which they stand. */
export interface ArrangeBoxesInput extends ActInput {
  /** all boxes; of a stack the top one first */
  readonly boxes: readonly string[];
  readonly standing: 'beside' | 'stacked';
}
export interface ArrangeBoxesResult extends Done {
  readonly boxes: readonly Box[];
}

export interface SaveBoardInput extends ActInput {
  /** name of the board; a new name makes a new board, a known one gets a new revision */
  readonly board: string;
  /** name of the revision; the next whole number where it is left out */
  readonly revision?: string;
  /** name of the file that it was read from */
  readonly source?: string;
  readonly lines: readonly ReadRow[];
}
export interface SaveBoardResult extends Done {
  readonly board: string;
  readonly boardId: string;
  readonly revision: string;
  readonly revisionId: string;
  readonly lines: number;
}

export interface ChooseInput extends ActInput {
  /** name of the board */
  readonly board: string;
  readonly demand: string;
  /** null takes back what was chosen for the demand */
  readonly bag: number | null;
  readonly accept: boolean;
  /** the line that the person had in mind, where several have the demand */
  readonly row?: number;
  /** why a bag is taken that does not serve; kept as the note of the act and shown wherever the choice is used */
  readonly reason?: string;
}
export interface ChooseResult extends Done {
  readonly board: string;
  readonly demand: string;
  readonly bag: number | null;
  readonly accept: boolean;
}

/** Leaves the lines of a demand off for now, or fits them again. */
export interface FitLaterInput extends ActInput {
  /** name of the board */
  readonly board: string;
  readonly demand: string;
  readonly later: boolean;
  /** the line that the person had in mind, where several have the demand */
  readonly row?: number;
}
export interface FitLaterResult extends Done {
  readonly board: string;
  readonly demand: string;
  readonly later: boolean;
}

/** Keeps a build of a saved board without a promise: it competes with all other planned builds until it is reserved. */
export interface PlanBuildInput extends ActInput {
  readonly board: string;
  /** the newest where it is left out */
  readonly revision?: string;
  readonly boards: number;
  /** that of the board where it is left out */
  readonly name?: string;
  /** small comes first; 5 where it is left out */
  readonly priority?: number;
  /** plain date, YYYY-MM-DD */
  readonly due?: string;
}
export interface PlanBuildResult extends Done {
  readonly build: string;
  readonly name: string;
  readonly board: string;
  readonly revision: string;
  readonly boards: number;
  readonly priority: number;
  readonly due: string | null;
}

/** What the plan calls `build`, and what it is a build of. */
export interface BuildInput {
  /** `Demand.build` in the plan */
  readonly key: string;
  /** name shown to people */
  readonly name: string;
  /** id of the planned build that gets this plan; a new build where it is left out */
  readonly planned?: string;
  readonly board?: string;
  readonly revision?: string;
  readonly priority?: number;
  readonly due?: string;
}
/** Where a planned take lies in the trays; in the order of the route. */
export interface CellInput {
  readonly line: string;
  readonly bag: number;
  readonly tray: number;
  readonly cell: number;
}
export interface ReserveKitInput extends ActInput {
  readonly plan: Plan;
  /** change number of the snapshot that was planned on */
  readonly change: number;
  readonly builds: readonly BuildInput[];
  /** tray cells in the order of the walk; without them the takes are numbered in one tray, in the plan's order */
  readonly cells?: readonly CellInput[];
  /** promise the pieces even where not one board can be built */
  readonly anyway?: boolean;
}
export interface ReserveKitResult extends Done {
  readonly builds: readonly { readonly key: string; readonly build: string; readonly name: string }[];
  readonly bags: readonly BagBalance[];
}

/** One take of a kit (`take` is its id in `readKit`). */
export interface KitPick {
  readonly take: string;
  /** what really went into the cell */
  readonly quantity: number;
  /** the bag gave no more: the rest of the promise is let go and the bag is to be counted */
  readonly short?: boolean;
  /** no more is wanted: the rest of the promise is let go, and nothing is wrong with the bag */
  readonly enough?: boolean;
  /** what the person's screen knew to be picked of it before: where that is no longer so, nothing is booked */
  readonly saw?: number;
}
export interface PickForBuildInput extends ActInput {
  readonly build: string;
  /** all that is open, as planned, where it is left out */
  readonly picks?: readonly KitPick[];
  readonly inHand?: boolean;
}
export interface PickForBuildResult extends Done {
  readonly build: string;
  readonly picked: number;
  readonly open: number;
  readonly bags: readonly BagBalance[];
}

export interface FinishBuildInput extends ActInput {
  readonly build: string;
  /** boards that were really made; all that were planned where it is left out */
  readonly made?: number;
}
export interface FinishBuildResult extends Done {
  readonly build: string;
  readonly made: number;
}

export interface Leftover {
  readonly take: string;
  readonly quantity: number;
}
export interface ReturnLeftoversInput extends ActInput {
  readonly build: string;
  readonly returns: readonly Leftover[];
}
export interface ReturnLeftoversResult extends Done {
  readonly build: string;
  readonly returned: number;
  readonly bags: readonly BagBalance[];
}

export interface CancelBuildInput extends ActInput {
  readonly build: string;
  /** what goes back of what was picked; all of it where it is left out */
  readonly returns?: readonly Leftover[];
}
export interface CancelBuildResult extends Done {
  readonly build: string;
  readonly returned: number;
  readonly bags: readonly BagBalance[];
}

/** Kinds of acts, as they stand in the ledger. An undo is an act of the same kind with `undoes` set. */
export type ActKind =
  | 'received'
  | 'imported'
  | 'picked'
  | 'returned'
  | 'counted'
  | 'set-aside'
  | 'boxes-arranged'
  | 'board-saved'
  | 'chosen'
  | 'fit-later'
  | 'planned'
  | 'reserved'
  | 'picked-for-build'
  | 'built'
  | 'leftovers-returned'
  | 'cancelled';
