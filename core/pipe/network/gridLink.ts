/** What one link of a network loses at a flow, with its gradient. Strict SI. */
import { GRAVITY } from "../../numeric/constants";
import type { GridLink, HeadAndSlope } from "../../numeric/gradientNetwork";
import { item } from "../../numeric/series";
import { continuousFriction, transitionAnchors } from "../straight/continuousFriction";

/** A pump's curve at its own speed: H = H0 + b Q − c Q² from `from` on; a curve of points has one such span for each. */
export interface PumpSpan {
  /** m³/s */
  readonly from: number;
  readonly H0: number;
  readonly b: number;
  readonly c: number;
}

export interface GridPump {
  /** Share of the curve's speed. */
  readonly speed: number;
  readonly spans: readonly PumpSpan[];
  /** Flow at which its curve ends, at its own speed. */
  readonly end: number;
}

export interface GridPipe {
  readonly D: number;
  readonly L: number;
  readonly roughness: number;
  readonly anchors: readonly [number, number];
  /** Coefficient of Hazen and Williams' formula in place of Darcy and Weisbach's. */
  readonly C: number | undefined;
}

/** h = pipe friction + linear q + square q|q| + power q|q|^(n−1), less the pump's head. */
export interface PadLink extends GridLink {
  readonly pipe: GridPipe | undefined;
  /** s/m² */
  readonly linear: number;
  /** s²/m⁵ */
  readonly square: number;
  /** Coefficient and exponent of a part's own curve. */
  readonly power: readonly [number, number];
  readonly pump: GridPump | undefined;
}

/** No gradient is smaller: a square law has none at 0, and an open valve may lose nothing. s/m² */
const LEAST_GRADIENT = 1e-3;

/** Re per m³/s in a bore. */
export function reynoldsFactor(D: number, viscosity: number): number {
  return 4 / (Math.PI * D * viscosity);
}

/** Velocity heads per flow squared in a bore, s²/m⁵. */
export function velocityHeadFactor(D: number): number {
  return 8 / (Math.PI ** 2 * GRAVITY * D ** 4);
}

export function pipeOf(D: number, L: number, roughness: number, C?: number): GridPipe {
  return { D, L, roughness, anchors: transitionAnchors(roughness, D), C };
}

function addPipe(pipe: GridPipe, size: number, viscosity: number, into: HeadAndSlope): void {
  const { D, L, C } = pipe;
  if (C !== undefined) {
    const r = (10.67 * L) / (C ** 1.852 * D ** 4.871);
    const g = r * size ** 0.852;
    into.h += g * size;
    into.g += 1.852 * g;
    return;
  }
  const c = (L / D) * velocityHeadFactor(D);
  const factor = reynoldsFactor(D, viscosity);
  // The laminar law is a straight line, so its limit at no flow is exact.
  const { f, slope } = continuousFriction(Math.max(size * factor, 1e-6), pipe.roughness, D, pipe.anchors);
  into.h += c * f * size ** 2;
  into.g += size * factor <= 1e-6 ? (64 * c) / factor : c * (2 * f * size + slope * factor * size ** 2);
}

/** The span of a pump's curve at a flow of its own speed. */
export function spanOf({ spans }: GridPump, flow: number): PumpSpan {
  let found = item(spans, 0);
  for (const span of spans) if (span.from <= flow) found = span;
  return found;
}

function pumpAt(pump: GridPump, q: number, into: HeadAndSlope): void {
  const w = pump.speed;
  const chord = (w * item(pump.spans, 0).H0) / pump.end;
  const forward = Math.max(q, 0);
  const { H0, b, c } = spanOf(pump, forward / w);
  const fall = 2 * c * forward - w * b;
  // On a rising part the chord of the whole curve keeps the search moving to the stable side; backwards it goes on as a line.
  into.g = fall > 0 && q > 0 ? fall : chord;
  into.h = -(w * w * H0 + w * b * forward - c * forward * forward) + Math.min(q, 0) * chord;
}

/** Head lost and its gradient at a flow. */
export function lossAt(link: PadLink, q: number, viscosity: number, into: HeadAndSlope): void {
  if (link.pump) {
    pumpAt(link.pump, q, into);
  } else {
    const size = Math.abs(q);
    const { linear, square, power } = link;
    into.h = (linear + square * size) * size;
    into.g = linear + 2 * square * size;
    if (power[0] !== 0) {
      into.h += power[0] * size ** power[1];
      into.g += power[0] * power[1] * size ** (power[1] - 1);
    }
    if (link.pipe) addPipe(link.pipe, size, viscosity, into);
    if (q < 0) into.h = -into.h;
  }
  if (!(into.g > LEAST_GRADIENT)) into.g = LEAST_GRADIENT;
}

/** Head of a pump at no flow and its speed. */
export function shutOffHead({ speed, spans }: GridPump): number {
  return speed ** 2 * item(spans, 0).H0;
}
