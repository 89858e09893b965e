/** The open journal as the places see it: read through `ledger`, write through the verbs, take back with `undo`. */
export { ledger } from './ledger.ts';
export { correct, record, recordAll, remove, restore, type NewFact, type Saved } from './record.ts';
export { retrySaving, saving, type Saving } from './saving.ts';
export { undo, undoable } from './undo.ts';
