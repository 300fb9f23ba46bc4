/** Mutations that move cells: a call's address is then void, and everything calculates again. */
export const MOVES =
  /^sheet\.mutation\.(?:insert-row|insert-col|remove-rows?|remove-col|move-range|move-rows|move-col(?:umn)?s|remove-sheet|reorder-range)/;
