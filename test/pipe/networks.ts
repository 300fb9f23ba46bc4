/** The solved networks of test/golden/network as arguments of PIPE.NETWORK. Their "source" names method and checks. */
import { readFileSync, readdirSync } from "node:fs";

interface GoldenLink {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly kind: string;
  readonly nominal_in?: string;
  readonly length_m?: number;
  readonly sum_K?: number;
  readonly known_head_m?: number;
  readonly known_flow_m3_h?: number;
  readonly linear_share?: number;
  readonly Kvs_m3_h?: number;
  readonly opening?: number;
  readonly characteristic?: string;
  readonly rangeability?: number;
  readonly check_valve?: boolean;
  readonly closed?: boolean;
  readonly H0_m?: number;
  readonly b_m_per_m3h?: number;
  readonly c_m_per_m3h2?: number;
  readonly speed?: number;
  readonly Q_m3_h?: readonly number[];
  readonly H_m?: readonly number[];
}

export interface Golden {
  readonly id: string;
  readonly nodes: readonly { id: string; elevation_m: number; head_m?: number; demand_m3_h?: number }[];
  readonly links: readonly GoldenLink[];
  readonly solution: {
    readonly links: readonly {
      id: string;
      Q_m3_h: number;
      status: string;
      head_lost_m: number;
      velocity_m_s?: number;
    }[];
    readonly nodes: readonly { id: string; head_m: number | null; gauge_kPa: number | null }[];
  };
  readonly pressure_at_breaker_siphon_full_kPa?: number;
  readonly NPSH?: { readonly NPSH_available_m: number };
}

const FOLDER = new URL("../golden/network/", import.meta.url);

export const GOLDENS: readonly Golden[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith(".json"))
  .sort()
  .map((file) => JSON.parse(readFileSync(new URL(file, FOLDER), "utf8")) as Golden);

export type Raw = string | number | null;

const HEAD = [
  "from",
  "to",
  "element",
  "size",
  "length",
  "K",
  "flow coefficient",
  "opening",
  "characteristic",
  "rangeability",
  "loss",
  "known flow",
  "linear share",
];

function rowOf(link: GoldenLink): readonly Raw[] {
  return [
    link.from,
    link.to,
    link.check_valve ? `${link.id}, check valve` : link.id,
    link.nominal_in ?? null,
    link.length_m ?? null,
    link.sum_K ?? null,
    link.Kvs_m3_h ?? null,
    link.closed ? 0 : (link.opening ?? null),
    link.characteristic ?? null,
    link.rangeability ?? null,
    link.known_head_m ?? null,
    link.known_flow_m3_h ?? null,
    link.linear_share ?? null,
  ];
}

function pumpRows(link: GoldenLink): readonly (readonly Raw[])[] {
  const points = link.Q_m3_h?.map((q, i): readonly Raw[] => [
    link.id,
    link.speed ?? 1,
    q,
    link.H_m?.[i] ?? 0,
    null,
    null,
    null,
  ]);
  return (
    points ?? [[link.id, link.speed ?? 1, null, null, link.H0_m ?? 0, link.b_m_per_m3h ?? 0, link.c_m_per_m3h2 ?? 0]]
  );
}

/** Arguments in SI units. */
export function argumentsOf({ links, nodes }: Golden): readonly unknown[] {
  const method = links.some(({ kind }) => kind === "pipe_hw") ? "Hazen-Williams" : "Darcy-Weisbach";
  const pumps = links.filter(({ kind }) => kind.startsWith("pump")).flatMap(pumpRows);
  return [
    [HEAD, ...links.map(rowOf)],
    pumps.length > 0 ? pumps : null,
    nodes.map(({ id, elevation_m, head_m, demand_m3_h }) => [id, elevation_m, head_m ?? null, demand_m3_h ?? 0]),
    [
      ["water", "80 °F"],
      ["method", method],
    ],
    "SI",
  ];
}
