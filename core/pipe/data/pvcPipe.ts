/**
 * PVC pipe 1120, Schedules 40 and 80. Inches and psi of water at 73 °F, as printed.
 * Outside diameter and minimum wall: ASTM D1785. Average bore and rating: pipe data sheets after ASTM D1785.
 */
export interface PvcPipe {
  readonly size: string;
  readonly schedule: "40" | "80";
  /** in */
  readonly outside: number;
  /** Minimum wall, in. */
  readonly wall: number;
  /** Average bore, in. */
  readonly averageBore: number;
  /** Pressure rating at 73 °F, plain ends, psi. */
  readonly rating: number;
}

export const PVC_PIPE: readonly PvcPipe[] = [
  { size: "1/2 in", schedule: "40", outside: 0.84, wall: 0.109, averageBore: 0.608, rating: 600 },
  { size: "3/4 in", schedule: "40", outside: 1.05, wall: 0.113, averageBore: 0.81, rating: 480 },
  { size: "1 in", schedule: "40", outside: 1.315, wall: 0.133, averageBore: 1.033, rating: 450 },
  { size: "1-1/4 in", schedule: "40", outside: 1.66, wall: 0.14, averageBore: 1.364, rating: 370 },
  { size: "1-1/2 in", schedule: "40", outside: 1.9, wall: 0.145, averageBore: 1.592, rating: 330 },
  { size: "2 in", schedule: "40", outside: 2.375, wall: 0.154, averageBore: 2.049, rating: 280 },
  { size: "2-1/2 in", schedule: "40", outside: 2.875, wall: 0.203, averageBore: 2.445, rating: 300 },
  { size: "3 in", schedule: "40", outside: 3.5, wall: 0.216, averageBore: 3.042, rating: 260 },
  { size: "3-1/2 in", schedule: "40", outside: 4, wall: 0.226, averageBore: 3.52, rating: 240 },
  { size: "4 in", schedule: "40", outside: 4.5, wall: 0.237, averageBore: 3.998, rating: 220 },
  { size: "5 in", schedule: "40", outside: 5.563, wall: 0.258, averageBore: 5.017, rating: 190 },
  { size: "6 in", schedule: "40", outside: 6.625, wall: 0.28, averageBore: 6.031, rating: 180 },
  { size: "8 in", schedule: "40", outside: 8.625, wall: 0.322, averageBore: 7.943, rating: 160 },
  { size: "1/2 in", schedule: "80", outside: 0.84, wall: 0.147, averageBore: 0.528, rating: 850 },
  { size: "3/4 in", schedule: "80", outside: 1.05, wall: 0.154, averageBore: 0.724, rating: 690 },
  { size: "1 in", schedule: "80", outside: 1.315, wall: 0.179, averageBore: 0.935, rating: 630 },
  { size: "1-1/4 in", schedule: "80", outside: 1.66, wall: 0.191, averageBore: 1.256, rating: 520 },
  { size: "1-1/2 in", schedule: "80", outside: 1.9, wall: 0.2, averageBore: 1.476, rating: 470 },
  { size: "2 in", schedule: "80", outside: 2.375, wall: 0.218, averageBore: 1.913, rating: 400 },
  { size: "2-1/2 in", schedule: "80", outside: 2.875, wall: 0.276, averageBore: 2.289, rating: 420 },
  { size: "3 in", schedule: "80", outside: 3.5, wall: 0.3, averageBore: 2.864, rating: 370 },
  { size: "3-1/2 in", schedule: "80", outside: 4, wall: 0.318, averageBore: 3.326, rating: 350 },
  { size: "4 in", schedule: "80", outside: 4.5, wall: 0.337, averageBore: 3.786, rating: 320 },
  { size: "5 in", schedule: "80", outside: 5.563, wall: 0.375, averageBore: 4.767, rating: 290 },
  { size: "6 in", schedule: "80", outside: 6.625, wall: 0.432, averageBore: 5.709, rating: 280 },
  { size: "8 in", schedule: "80", outside: 8.625, wall: 0.5, averageBore: 7.565, rating: 250 },
];
