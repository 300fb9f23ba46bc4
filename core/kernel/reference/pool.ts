import { sourceEntries } from "./entry";

/** Heat and water of swimming pools. */
export const poolSources = sourceEntries({
  smithLofJones1994: {
    short: "Smith, Löf, Jones 1994",
    full: "C. C. Smith, G. Löf, R. Jones: Measurement and analysis of evaporation from an inactive outdoor swimming pool, Solar Energy 53 (1994) 3–7. Ratios to the handbook equation from the opened abstract; the coefficients 30.6 and 32.1 from memory, they repeat those ratios.",
    seen: "copied",
  },
  smithLofJones1998: {
    short: "Smith, Löf, Jones 1998",
    full: "C. C. Smith, G. O. G. Löf, R. W. Jones: Rates of evaporation from swimming pools in active use, ASHRAE Transactions 104(1A), 1998, paper 4146 (abstract).",
    seen: "opened",
  },
  carrier1918: {
    short: "Carrier 1918",
    full: "W. H. Carrier: The temperature of evaporation, ASHVE Transactions 24 (1918) 25–50, in the SI form of the ASHRAE Handbook, HVAC Applications (from memory); its inch-pound form (95 + 0.425 v) stands in the abstract of Smith, Löf, Jones 1998 and reads 0.5 % lower.",
    seen: "memory",
  },
  ashraeApplications2011: {
    short: "ASHRAE HVAC Applications 2011",
    full: "ASHRAE Handbook, HVAC Applications (2011), chapter 5, natatoriums, as quoted by the EnergyPlus Engineering Reference, indoor swimming pool.",
    seen: "copied",
  },
  mcMillan1971: {
    short: "McMillan 1971",
    full: "W. McMillan: Heat dispersal: Lake Trawsfynydd cooling studies, Symposium on Freshwater Biology and Electrical Power Generation, 1971; wind function 3.6 + 2.5 v from memory, its area term (5 km²/A)^0.05 as carried by open lake models.",
    seen: "memory",
  },
  shah2012: {
    short: "Shah 2012",
    full: "M. M. Shah: Improved method for calculating evaporation from indoor water pools, Energy and Buildings 49 (2012) 306–309; constants from memory, they repeat nine tabulated values within 0.2 %. Mean deviation 18 % over 11 data sets (M. M. Shah, HVAC&R Research 8 (2002) 125–138).",
    seen: "memory",
  },
  vdi2089: {
    short: "VDI 2089 part 1",
    full: "VDI 2089 part 1: Building services in swimming baths, indoor pools, 2010; transfer coefficients 7 m/h at rest and 0.7 m/h covered as carried by the open library AixLib; 28 m/h for public baths in use.",
    seen: "copied",
  },
  bowen1926: {
    short: "Bowen 1926",
    full: "I. S. Bowen: The ratio of heat losses by conduction and by evaporation from any water surface, Physical Review 27 (1926) 779–787; constant 0.0101 inHg/°F (0.0615646 kPa/K) from memory.",
    seen: "memory",
  },
  isoTr12596: {
    short: "ISO/TR 12596",
    full: "ISO/TR 12596:1995, Solar heating: swimming-pool heating systems, dimensions, design and installation guidelines; shares of the 10 m wind from memory.",
    seen: "memory",
  },
  czarnecki1978: {
    short: "Czarnecki 1978",
    full: "J. T. Czarnecki: Swimming pool heating by solar energy, CSIRO Division of Mechanical Engineering, Technical Report 19, 1978; film coefficient 3.1 + 4.1 v W/(m²·K) as carried by open code under this citation; ISO/TR 12596 prints the same form (from memory).",
    seen: "copied",
  },
  clarkAllen1978: {
    short: "Clark, Allen 1978",
    full: "G. Clark, C. Allen: The estimation of atmospheric radiation for clear and cloudy skies, 2nd National Passive Solar Conference, 1978, 675–678, with the cloud term of G. N. Walton (NBSIR 83-2655, 1983), as quoted by the EnergyPlus Engineering Reference, climate calculations.",
    seen: "copied",
  },
  energyPlusPool: {
    short: "EnergyPlus, indoor pool",
    full: "EnergyPlus Engineering Reference: indoor swimming pool (covers: each kind of heat has its own reduction, counted by the covered fraction).",
    seen: "opened",
  },
  ashraePools1999: {
    short: "ASHRAE 1999 via Lund",
    full: "J. W. Lund: Design considerations for pools and spas (natatoriums), Geo-Heat Center Bulletin, quoting ASHRAE Handbook, HVAC Applications (1999): surface coefficient 10.5 BTU/(h·ft²·°F), heat-up ρ·c·V·ΔT over time.",
    seen: "copied",
  },
  doePoolHeaters: {
    short: "US DOE pool heaters",
    full: "US Department of Energy: consumer guidance on sizing pool heaters (output = area × temperature difference × 12), and fact sheet on heat pump swimming pool heaters, 2004.",
    seen: "copied",
  },
  nrelPools: {
    short: "US DOE / NREL pools",
    full: "US Department of Energy, NREL: Energy smart pools (RSPEC) guidance: an open outdoor pool absorbs 75 to 85 % of the sun; a transparent cover takes off 5 to 15 points, an opaque one 20 to 40; losses 70 % evaporation, 20 % radiation, 10 % the rest.",
    seen: "copied",
  },
  et22swe0052: {
    short: "ET22SWE0052",
    full: "Statewide field test ET22SWE0052: swimming pools as heat sinks for air conditioners, 2024 (cooling energy −13 %, efficiency +31 % above 95 °F outdoors, pool +2.3 °F in the mean).",
    seen: "copied",
  },
  woolley2011: {
    short: "Woolley and others 2011",
    full: "J. Woolley, C. Harrington, M. Modera: Building and Environment 46 (2011) 187–195, on swimming pools as heat sinks for air conditioners (modelled: cooling energy about −30 %, peak power about −40 %), from the abstract.",
    seen: "copied",
  },
  calPolyCovers2016: {
    short: "Cal Poly 2016",
    full: "National Pool Industry Research Center, California Polytechnic State University: cover study, 2016: evaporation cut while in place, 90 days without bathers.",
    seen: "copied",
  },
  poolTextbook: {
    short: "pool trade texts",
    full: "Pool trade texts: 8.33 lb of water a gallon (1,100 gal by 8 °F: 73,304 BTU); 7.48 gal a cubic foot; kidney 0.45 × (A + B) × L; 19,149 gal in 8 h: 39.9 gpm.",
    seen: "copied",
  },
  cpscSpa1979: {
    short: "CPSC 79-071",
    full: "US Consumer Product Safety Commission, release 79-071 (1979): water of spas and hot tubs should never exceed 104 °F (40 °C); the limit of UL 1563 too.",
    seen: "copied",
  },
  duffieBeckman2013: {
    short: "Duffie, Beckman 2013",
    full: "J. A. Duffie, W. A. Beckman: Solar Engineering of Thermal Processes, 4th edition, Wiley 2013, chapters 1 and 2 (declination, sun outside the air, hourly shares by Collares-Pereira and Rabl 1979, days of a month by Bendt and others 1981, Hollands and Huget 1983 and Herzog 1985); constants from memory.",
    seen: "memory",
  },
  erbs1984: {
    short: "Erbs 1984",
    full: "D. G. Erbs: Models and applications for weather statistics related to building heating and cooling loads, PhD thesis, University of Wisconsin-Madison, 1984: shape of the day's temperature; coefficients from memory.",
    seen: "memory",
  },
  kastenCzeplak1980: {
    short: "Kasten, Czeplak 1980",
    full: "F. Kasten, G. Czeplak: Solar and terrestrial radiation dependent on the amount and type of cloud, Solar Energy 24 (1980) 177–189; constants from memory.",
    seen: "memory",
  },
  burchChristensen2007: {
    short: "Burch, Christensen 2007",
    full: "J. Burch, C. Christensen: Towards development of an algorithm for mains water temperature, ASES 2007; form read in open weather code of NREL.",
    seen: "copied",
  },
});
