/** The functions of Excel that the sheet engine works out as Excel does, and what their arguments take. */

/**
 * What an argument takes. "s": one value; a range there meets the formula's row or column. "r": a range as it is. "a": a
 * range or a calculation over ranges. "b": a branch, which is used as the whole is. "x": one cell, and a range has no
 * meaning that the engine shares.
 */
export type ArgumentKind = "s" | "r" | "a" | "b" | "x";

export interface ReadableFunction {
  readonly first: readonly ArgumentKind[];
  /** For the arguments behind the first ones, again and again; none where it is empty. */
  readonly rest: readonly ArgumentKind[];
  /** Gives several cells. */
  readonly spills: boolean;
}

/** By what their arguments take: the first arguments, then "|" and those that repeat. */
const BY_ARGUMENTS: Readonly<Record<string, string>> = {
  "|r":
    "SUM PRODUCT SUMSQ MIN MAX MINA MAXA COUNT COUNTA AVERAGE AVERAGEA MEDIAN MODE MODE.SNGL STDEV STDEV.S STDEV.P STDEVA " +
    "STDEVP STDEVPA VAR VAR.S VAR.P VARA VARP VARPA DEVSQ AVEDEV GEOMEAN HARMEAN KURT SKEW SKEW.P AND OR XOR GCD LCM " +
    "MULTINOMIAL CONCAT",
  "s|r": "NPV SUBTOTAL",
  "ss|r": "AGGREGATE TEXTJOIN",
  "|rs": "COUNTIFS",
  "r|rs": "SUMIFS AVERAGEIFS MAXIFS MINIFS",
  r: "ROWS COLUMNS COUNTBLANK",
  rs: "COUNTIF LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE QUARTILE.INC QUARTILE.EXC TRIMMEAN IRR",
  rss: "MIRR PERCENTRANK PERCENTRANK.INC PERCENTRANK.EXC Z.TEST ZTEST",
  rsr: "SUMIF AVERAGEIF DAVERAGE DCOUNT DCOUNTA DGET DMAX DMIN DPRODUCT DSTDEV DSTDEVP DSUM DVAR DVARP",
  rr: "CORREL PEARSON RSQ SLOPE INTERCEPT STEYX COVAR COVARIANCE.P COVARIANCE.S F.TEST FTEST CHISQ.TEST CHITEST",
  rrs: "XIRR",
  rrss: "PROB T.TEST TTEST",
  srr: "FORECAST FORECAST.LINEAR XNPV",
  srs: "MATCH RANK RANK.EQ RANK.AVG",
  srss: "VLOOKUP HLOOKUP XMATCH",
  srrsss: "XLOOKUP",
  sr: "FVSCHEDULE",
  ssr: "NETWORKDAYS WORKDAY",
  sssr: "NETWORKDAYS.INTL WORKDAY.INTL SERIESSUM",
  rsss: "INDEX",
  rssss: "OFFSET",
  saa: "LOOKUP",
  aa: "SUMX2MY2 SUMX2PY2 SUMXMY2",
  a: "MDETERM",
  "|a": "SUMPRODUCT",
  sbb: "IF",
  "s|b": "CHOOSE",
  x: "ROW COLUMN N T",
  "|s":
    "IFERROR IFNA IFS SWITCH NOT TRUE FALSE NA PI RAND RANDBETWEEN TODAY NOW ISBLANK ISERR ISERROR ISEVEN ISLOGICAL ISNA " +
    "ISNONTEXT ISNUMBER ISODD ISTEXT ERROR.TYPE TYPE ADDRESS INDIRECT HYPERLINK " +
    "ABS ACOS ACOSH ACOT ACOTH ARABIC ASIN ASINH ATAN ATAN2 ATANH BASE CEILING CEILING.MATH CEILING.PRECISE COMBIN " +
    "COMBINA COS COSH COT COTH CSC CSCH DECIMAL DEGREES EVEN EXP FACT FACTDOUBLE FLOOR FLOOR.MATH FLOOR.PRECISE INT LN " +
    "LOG LOG10 MOD MROUND ODD POWER QUOTIENT RADIANS ROMAN ROUND ROUNDDOWN ROUNDUP SEC SECH SIGN SIN SINH SQRT SQRTPI " +
    "TAN TANH TRUNC DATE DATEDIF DATEVALUE DAY DAYS DAYS360 EDATE EOMONTH HOUR ISOWEEKNUM MINUTE MONTH SECOND TIME " +
    "TIMEVALUE WEEKDAY WEEKNUM YEAR YEARFRAC CHAR CLEAN CODE CONCATENATE EXACT FIND FIXED LEFT LEN LOWER MID " +
    "NUMBERVALUE PROPER REPLACE REPT RIGHT SEARCH SUBSTITUTE TEXT TEXTAFTER TEXTBEFORE TRIM UNICHAR UNICODE UPPER VALUE " +
    "BESSELI BESSELJ BESSELK BESSELY BIN2DEC BIN2HEX BIN2OCT BITAND BITLSHIFT BITOR BITRSHIFT BITXOR COMPLEX CONVERT " +
    "DEC2BIN DEC2HEX DEC2OCT DELTA ERF ERF.PRECISE ERFC ERFC.PRECISE GESTEP HEX2BIN HEX2DEC HEX2OCT IMABS IMAGINARY " +
    "IMARGUMENT IMCONJUGATE IMDIV IMREAL IMSQRT IMSUB OCT2BIN OCT2DEC OCT2HEX CUMIPMT CUMPRINC DB DDB DISC DOLLARDE " +
    "DOLLARFR EFFECT FV INTRATE IPMT ISPMT NOMINAL NPER PDURATION PMT PPMT PV RATE RRI SLN SYD VDB BETA.DIST BETA.INV " +
    "BETADIST BETAINV BINOM.DIST BINOM.INV BINOMDIST CHIDIST CHIINV CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT " +
    "CONFIDENCE CONFIDENCE.NORM CONFIDENCE.T CRITBINOM EXPON.DIST EXPONDIST F.DIST F.DIST.RT F.INV F.INV.RT FDIST FINV " +
    "FISHER FISHERINV GAMMA GAMMA.DIST GAMMA.INV GAMMADIST GAMMAINV GAMMALN GAMMALN.PRECISE GAUSS HYPGEOM.DIST " +
    "HYPGEOMDIST LOGINV LOGNORM.DIST LOGNORM.INV LOGNORMDIST NEGBINOM.DIST NEGBINOMDIST NORM.DIST NORM.INV NORM.S.DIST " +
    "NORM.S.INV NORMDIST NORMINV NORMSDIST NORMSINV PERMUT PERMUTATIONA PHI POISSON POISSON.DIST STANDARDIZE T.DIST " +
    "T.DIST.2T T.DIST.RT T.INV T.INV.2T TDIST TINV WEIBULL WEIBULL.DIST",
};

/** They give several cells: only in formulas that are kept as arrays, or inside what takes a range. */
const SPILLING =
  "BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER FREQUENCY HSTACK LINEST MAKEARRAY MAP MINVERSE MMULT MODE.MULT " +
  "MUNIT RANDARRAY REDUCE SCAN SEQUENCE SORT SORTBY TAKE TEXTSPLIT TOCOL TOROW TRANSPOSE UNIQUE VSTACK WRAPCOLS WRAPROWS";

const kinds = (text: string): readonly ArgumentKind[] => [...text] as ArgumentKind[];

function specified(pattern: string, spills = false): ReadableFunction {
  const [first = "", rest = ""] = pattern.split("|");
  return { first: kinds(first), rest: kinds(rest), spills };
}

export const READABLE: ReadonlyMap<string, ReadableFunction> = new Map([
  ...Object.entries(BY_ARGUMENTS).flatMap(([pattern, names]) =>
    names.split(" ").map((name) => [name, specified(pattern)] as const),
  ),
  ...SPILLING.split(" ").map((name) => [name, specified("|a", true)] as const),
]);

export function argumentKind({ first, rest }: ReadableFunction, at: number): ArgumentKind {
  return first[at] ?? rest[(at - first.length) % Math.max(1, rest.length)] ?? "s";
}

/** Whether the function takes any number of ranges from this argument on, so that one may be written as several. */
export const takesMore = ({ first, rest }: ReadableFunction, at: number): boolean =>
  at >= first.length && rest.length === 1 && rest[0] === "r";

/** What SUMPRODUCT and LOOKUP work out cell by cell without being entered as an array. */
export const CELL_BY_CELL: ReadonlySet<string> = new Set(
  (
    "ABS ACOS ASIN ATAN CHAR CODE COS COUNTIF COUNTIFS DATE DAY EXACT EXP FIND HOUR INT ISBLANK ISERR ISERROR ISNA ISNONTEXT " +
    "ISNUMBER ISTEXT LEFT LEN LN LOG LOG10 LOWER MATCH MID MINUTE MOD MONTH POWER RIGHT ROUND ROUNDDOWN ROUNDUP SEARCH " +
    "SIGN SIN SQRT SUBSTITUTE SUMIF SUMIFS TAN TEXT TRIM TRUNC UPPER VALUE WEEKDAY YEAR"
  ).split(" "),
);

/** They are another value whenever the sheet is calculated. */
export const VOLATILE: ReadonlySet<string> = new Set("NOW TODAY RAND RANDARRAY RANDBETWEEN".split(" "));

/** They count days from the first of the workbook's calendar, which the engine takes to be 1900's. */
export const OF_DATES: ReadonlySet<string> = new Set(
  (
    "DATE DATEDIF DATEVALUE DAY DAYS DAYS360 DISC EDATE EOMONTH INTRATE ISOWEEKNUM MONTH NETWORKDAYS NETWORKDAYS.INTL NOW " +
    "TEXT TODAY VALUE WEEKDAY WEEKNUM WORKDAY WORKDAY.INTL XIRR XNPV YEAR YEARFRAC"
  ).split(" "),
);

/** They leave rows out that are hidden, which the engine takes no notice of. */
export const OF_HIDDEN_ROWS: ReadonlySet<string> = new Set(["SUBTOTAL", "AGGREGATE"]);
