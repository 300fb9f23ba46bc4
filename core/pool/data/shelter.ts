/** Wind at the water as a share of the wind at 10 m (ISO/TR 12596, from memory: 0.1–0.15, 0.3, 0.6–1.0). */
export const SHELTERS = { open: 0.6, suburban: 0.3, sheltered: 0.1 } as const;
export type ShelterWord = keyof typeof SHELTERS;
