import type { FluidData } from "../fluidData";
import { R1234YF } from "./r-1234yf";
import { R1234ZEE } from "./r-1234zee";
import { R125 } from "./r-125";
import { R134A } from "./r-134a";
import { R143A } from "./r-143a";
import { R22 } from "./r-22";
import { R290 } from "./r-290";
import { R32 } from "./r-32";
import { R600A } from "./r-600a";
import { R744 } from "./r-744";

/** The pure fluids; R-125 and R-143a serve as components of blends too. */
export const PURE_FLUIDS: readonly FluidData[] = [R22, R32, R125, R134A, R143A, R290, R600A, R744, R1234YF, R1234ZEE];
