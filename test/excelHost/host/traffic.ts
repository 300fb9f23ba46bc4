/** What went over the wire: requests, actions and bytes, for tests that hold the product to a budget. */
import type { Request } from "../client/protocol";

export interface Exchange {
  readonly request: Request;
  readonly bytes: number;
  readonly actions: number;
  /** Undefined while the answer is out, and where the request was refused. */
  answerBytes?: number;
}

export interface TrafficLog {
  readonly exchanges: readonly Exchange[];
  add(request: Request): Exchange;
  /** Forgets what came so far. */
  clear(): void;
  /** Requests, those that only let go of objects included: each is a round trip on the web. */
  requests(): number;
  /** Requests that someone waits for: without those that only let go of objects. */
  roundTrips(): number;
  largestRequest(): number;
  largestAnswer(): number;
}

const onlyReleases = ({ body }: Request): boolean =>
  body.Actions.every(({ ActionType, Name }) => ActionType === 1 || Name === "_RemoveReference");

/** Of the custom-functions runtime and of the page: no requests to the workbook. */
export const isAside = ({ body, customData }: Request): boolean =>
  customData !== "IterativeExecutor" ||
  Object.values(body.ObjectPaths).some(({ ObjectPathType }) => ObjectPathType === 2);

export function trafficLog(): TrafficLog {
  let exchanges: Exchange[] = [];
  const most = (sizes: readonly number[]): number => sizes.reduce((a, b) => Math.max(a, b), 0);
  return {
    get exchanges() {
      return exchanges;
    },
    add(request) {
      const exchange: Exchange = { request, bytes: request.bytes, actions: request.body.Actions.length };
      if (!isAside(request)) exchanges.push(exchange);
      return exchange;
    },
    clear() {
      exchanges = [];
    },
    requests: () => exchanges.length,
    roundTrips: () => exchanges.filter(({ request }) => !onlyReleases(request)).length,
    largestRequest: () => most(exchanges.map(({ bytes }) => bytes)),
    largestAnswer: () => most(exchanges.map(({ answerBytes = 0 }) => answerBytes)),
  };
}
