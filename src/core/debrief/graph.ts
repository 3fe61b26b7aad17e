/** One surface that lost its sterility, at the step and the place (metres) where it did; x and y are null where no touch is known. */
export interface GraphNode {
  readonly surface: string;
  readonly words: string;
  /** The thing it is part of, with its generation (`glove.left#1`), and what a colleague calls that. */
  readonly thing: string;
  readonly thingWords: string;
  readonly break: number;
  /** 0 at the root. */
  readonly depth: number;
  readonly step: number;
  readonly x: number | null;
  readonly y: number | null;
}

/** By `touch`, sterility was lost from `from` to `to`; touch is null where it was no touch (use at the site). */
export interface GraphEdge {
  readonly from: string;
  readonly to: string;
  readonly step: number;
  readonly touch: number | null;
  /** It made `to` unsterile; false: it would have, had `to` not been so already. */
  readonly first: boolean;
}

/** What a root was lost to: the unsterile thing that it met, or null for a place or a drift. */
export interface GraphRoot {
  readonly surface: string;
  readonly step: number;
  readonly rule: string;
  /** Break that this root opened or belongs to; null for a root by which nothing new was lost. */
  readonly break: number | null;
  readonly against: string | null;
  readonly againstWords: string | null;
  readonly touch: number | null;
}

/** A graph of causes; nodes in order of steps, roots first. */
export interface CauseGraph {
  readonly nodes: readonly GraphNode[];
  readonly edges: readonly GraphEdge[];
  readonly roots: readonly GraphRoot[];
}

/** A thing in a graph: all its parts that lost their sterility, the earliest first; step, place and depth are those of the earliest. */
export interface ThingNode {
  readonly thing: string;
  readonly words: string;
  readonly depth: number;
  readonly step: number;
  readonly x: number | null;
  readonly y: number | null;
  readonly parts: readonly GraphNode[];
}

/** The same graph with the parts of each thing taken together; `from` and `to` are things, and each is told once, by its first touch. */
export interface ThingGraph {
  readonly nodes: readonly ThingNode[];
  readonly edges: readonly GraphEdge[];
  readonly roots: readonly GraphRoot[];
}
