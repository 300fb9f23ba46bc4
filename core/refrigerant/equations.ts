/** Equations of gauge readings. Strict SI. */
import { equation, symbol } from "../kernel/equation";

const Tl = symbol("temperature", "line temperature", 250, 350);

export const superheatOf = equation({
  name: "Superheat",
  form: "dT = Tl - Td",
  gives: "temperature difference",
  takes: { Tl, Td: symbol("temperature", "dew temperature at the pressure read", 240, 330) },
  source: "identity",
  code: (x) => x.Tl - x.Td,
});

export const subcoolingOf = equation({
  name: "Subcooling",
  form: "dT = Tb - Tl",
  gives: "temperature difference",
  takes: { Tb: symbol("temperature", "bubble temperature at the pressure read", 240, 330), Tl },
  source: "identity",
  code: (x) => x.Tb - x.Tl,
});

export const glideOf = equation({
  name: "Glide",
  form: "dT = Td - Tb",
  gives: "temperature difference",
  takes: {
    Td: symbol("temperature", "dew temperature", 240, 330),
    Tb: symbol("temperature", "bubble temperature", 240, 330),
  },
  source: "identity",
  code: (x) => x.Td - x.Tb,
});

export const latentOf = equation({
  name: "Latent heat",
  form: "L = hd - hb",
  gives: "enthalpy",
  takes: {
    hd: symbol("enthalpy", "enthalpy at the dew point", 3e5, 5e5),
    hb: symbol("enthalpy", "enthalpy at the bubble point", 1e5, 3e5),
  },
  source: "identity",
  code: (x) => x.hd - x.hb,
});
