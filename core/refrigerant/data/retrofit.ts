/** What to know before a retrofit: by safety class, and more for single refrigerants. Common practice. */
export const RETROFIT_BY_CLASS = {
  A1: "Not flammable. A machine keeps the refrigerant and oil of its nameplate; another one only with the maker's consent and a new label.",
  A2L: "Mildly flammable: only in equipment listed for it, never as a drop-in for another refrigerant.",
  A3: "Highly flammable: only in equipment listed for it, never as a drop-in for another refrigerant.",
} as const;

export const RETROFIT_NOTES: Readonly<Record<string, string>> = {
  "R-22": "No longer made for new supply in the US and the EU: reclaimed stock only; mineral oil in most machines.",
  "R-744":
    "Runs at several times the pressure of other refrigerants and mostly above its critical point: only in equipment built for it. At atmospheric pressure it has no liquid: it sublimes.",
  "R-404A": "Charge as liquid. Barred from most new refrigeration in the EU and the US.",
  "R-407A": "Charge as liquid: its glide parts the blend in a leak.",
  "R-449A": "Charge as liquid: its glide parts the blend in a leak.",
  "R-407C": "Charge as liquid: its glide parts the blend in a leak.",
  "R-410A":
    "About 1.6 times the pressure of R-22: never in coils, tools or lines rated for R-22. Polyolester oil; charge as liquid.",
  "R-454B": "Charge as liquid; gauges, recovery machine and cylinder for class 2L.",
  "R-452B": "Charge as liquid; gauges, recovery machine and cylinder for class 2L.",
  "R-32": "Gauges, recovery machine and cylinder for class 2L; its discharge runs hotter than that of R-410A.",
  "R-507A": "Barred from most new refrigeration in the EU and the US.",
};

/** Warming potential above which US rules bar new residential and light commercial air conditioners. */
export const US_NEW_SYSTEM_LIMIT = 700;
