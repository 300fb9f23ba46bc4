/** The air conditioner through a year: its load and what it does outdoors by the hour, and on the pool by its water. */
export interface OnPool {
  /** Net cooling and power of the machine without its outdoor fan, W, by the pool's temperature, K. */
  readonly cooling: (water: number) => number;
  readonly power: (water: number) => number;
}

export interface Machine {
  /** By hour, W. */
  readonly load: Float64Array;
  readonly outdoorCooling: Float64Array;
  readonly outdoorPower: Float64Array;
  /** W */
  readonly outdoorFan: number;
  /** Loss of starting and stopping: 1 − this × (1 − part load) of the full-load efficiency. */
  readonly cyclingLoss: number;
  readonly onPool: OnPool;
}
