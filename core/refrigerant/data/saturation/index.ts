import type { SaturationData } from "../saturationData";
import { R1234YF_LINE } from "./r-1234yf";
import { R1234ZEE_LINE } from "./r-1234zee";
import { R125_LINE } from "./r-125";
import { R134A_LINE } from "./r-134a";
import { R143A_LINE } from "./r-143a";
import { R22_LINE } from "./r-22";
import { R290_LINE } from "./r-290";
import { R32_LINE } from "./r-32";
import { R404A_LINE } from "./r-404a";
import { R407A_LINE } from "./r-407a";
import { R407C_LINE } from "./r-407c";
import { R410A_LINE } from "./r-410a";
import { R449A_LINE } from "./r-449a";
import { R452B_LINE } from "./r-452b";
import { R454B_LINE } from "./r-454b";
import { R507A_LINE } from "./r-507a";
import { R513A_LINE } from "./r-513a";
import { R600A_LINE } from "./r-600a";
import { R744_LINE } from "./r-744";

/** Every refrigerant's fitted saturation lines. */
export const SATURATION_LINES: readonly SaturationData[] = [
  R22_LINE,
  R32_LINE,
  R125_LINE,
  R134A_LINE,
  R143A_LINE,
  R290_LINE,
  R600A_LINE,
  R744_LINE,
  R1234YF_LINE,
  R1234ZEE_LINE,
  R404A_LINE,
  R407A_LINE,
  R407C_LINE,
  R410A_LINE,
  R449A_LINE,
  R452B_LINE,
  R454B_LINE,
  R507A_LINE,
  R513A_LINE,
];
