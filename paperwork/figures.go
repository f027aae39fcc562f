// Package paperwork turns a job into a pack: it works out the figures, holds
// them against the rules, turns them into words and hands the sheets to the
// layouts in their order.
package paperwork
