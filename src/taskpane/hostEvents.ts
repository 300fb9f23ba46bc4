/** The workbook's events, heard only while the pane shows and by one subscription for all views. */
import type { Unsubscribe, Workbook } from "../workbook/port";
import type { PaneVisibility } from "./visibility";

interface Shared<T> {
  add(call: (value: T) => void): Unsubscribe;
  emit(value: T): void;
  follow(shown: boolean): void;
}

function shared<T>(subscribe: (call: (value: T) => void) => Unsubscribe, visibility: PaneVisibility): Shared<T> {
  const calls = new Set<(value: T) => void>();
  let stop: Unsubscribe | undefined;
  const emit = (value: T): void => {
    for (const call of calls) call(value);
  };
  const follow = (shown: boolean): void => {
    if (shown && calls.size > 0) stop ??= subscribe(emit);
    else {
      stop?.();
      stop = undefined;
    }
  };
  return {
    emit,
    follow,
    add(call) {
      calls.add(call);
      follow(visibility.shown());
      return () => {
        calls.delete(call);
        follow(visibility.shown());
      };
    },
  };
}

/** The same workbook. What changed while the pane was closed isn't known: every sheet counts as changed afterwards. */
export function heardWhileShown(book: Workbook, visibility: PaneVisibility): Workbook {
  const selections = shared(book.onSelection.bind(book), visibility);
  const changes = shared(book.onChange.bind(book), visibility);
  // A pane that was never shown has read nothing yet.
  let missed = visibility.shown();
  visibility.onChange((shown) => {
    selections.follow(shown);
    changes.follow(shown);
    if (shown && missed)
      void book.sheets().then(
        (sheets) => changes.emit(sheets.map(({ name }) => name)),
        () => undefined,
      );
    missed = true;
  });
  return Object.create(book, {
    onSelection: { value: selections.add },
    onChange: { value: changes.add },
  }) as Workbook;
}
