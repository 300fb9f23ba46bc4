/** Requests and answers as Microsoft's client library sends and reads them; the names are the library's own. */

export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** For each argument the path of the object that it is, 0 where it is none. */
  readonly ReferencedObjectPathIds?: readonly unknown[];
}

/** How an object is reached. */
export interface ObjectPath {
  readonly Id: number;
  /** 1 the root · 2 a new object · 3 a method · 4 a property · 5 an item · 6 a kept reference · 7 a null object */
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface QueryInfo {
  readonly Select?: readonly string[];
  readonly Top?: number;
  readonly Skip?: number;
}

/** What is done to an object. */
export interface Action {
  readonly Id: number;
  /** 1 instantiate · 2 query · 3 method · 4 set a property · 5 trace; the others are not used here. */
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: QueryInfo;
}

export interface RequestBody {
  readonly AutoKeepReference: boolean;
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

/** A request on its way to the host. */
export interface Request {
  readonly body: RequestBody;
  readonly bytes: number;
  readonly flags: number;
  readonly headers: Readonly<Record<string, string>>;
  /** What kind of context sent it: "WacPartition" for those that Excel on the web answers apart from the workbook. */
  readonly customData: string;
}

export interface ActionResult {
  readonly ActionId: number;
  readonly Value: unknown;
}

export interface AnswerError {
  readonly Code: string;
  readonly Message: string;
  /** Place of the action that failed among the request's. Those before it have taken effect. */
  readonly ActionIndex: number;
  readonly Location: string;
}

export interface Answer {
  readonly Results: readonly ActionResult[];
  readonly TraceIds: readonly number[];
  readonly Error?: AnswerError;
}

/** The answer's text, or the number of the common API's error with which the whole request was refused. */
export type Reply = { readonly text: string } | { readonly refused: number; readonly message: string };

/** The flag of a request that waits until the user has finished editing a cell. */
export const DELAY_FOR_CELL_EDIT = 64;

/** Numbers of the common API's errors that the client turns into codes. */
export const REFUSED = {
  InvalidOperationInCellEditMode: 5004,
  InvalidOrTimedOutSession: 5012,
  ActivityLimitReached: 5102,
  RequestPayloadSizeLimitExceeded: 5103,
  ResponsePayloadSizeLimitExceeded: 5104,
} as const;

/** What Excel answers an action with instead of a result. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message = `${code}: as the stand-in words it; the product must not show this`,
  ) {
    super(message);
  }
}
