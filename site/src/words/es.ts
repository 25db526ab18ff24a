// Spanish: the page's own texts, and what the engine says.
import type { Table } from "./words";

export const page: Table = {};
export const engine: Table = {};
