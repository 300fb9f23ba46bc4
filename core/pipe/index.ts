import { catalogueOf } from "../kernel/define/catalogue";
import { pipeBore } from "./functions/bore";
import { pipeCement } from "./functions/cement";
import { pipeCure } from "./functions/cure";
import { pipeDrainCover } from "./functions/drainCover";
import { pipeEquivalent } from "./functions/equivalent";
import { pipeExpansion } from "./functions/expansion";
import { pipeFitting } from "./functions/fitting";
import { pipeFreeze } from "./functions/freeze";
import { pipeHammer } from "./functions/hammer";
import { pipeHeadLoss } from "./functions/headLoss";
import { pipeHeatLoss } from "./functions/heatLoss";
import { pipeLoop } from "./functions/loop";
import { pipeNetwork } from "./functions/network";
import { pipeNpsh } from "./functions/npsh";
import { pipeOperating } from "./functions/operating";
import { pipePumpPower } from "./functions/pumpPower";
import { pipeRating } from "./functions/rating";
import { pipeSize } from "./functions/size";
import { pipeSpeeds } from "./functions/speeds";
import { pipeSupport } from "./functions/support";
import { pipeValveSetting } from "./functions/valveSetting";
import { pipeVelocity } from "./functions/velocity";

export const pipeFunctions = catalogueOf([
  pipeBore,
  pipeVelocity,
  pipeHeadLoss,
  pipeFitting,
  pipeEquivalent,
  pipeLoop,
  pipeNetwork,
  pipeValveSetting,
  pipeSpeeds,
  pipeDrainCover,
  pipeOperating,
  pipeSize,
  pipePumpPower,
  pipeNpsh,
  pipeRating,
  pipeHammer,
  pipeHeatLoss,
  pipeFreeze,
  pipeExpansion,
  pipeSupport,
  pipeCure,
  pipeCement,
]);
