// Package laws is tests alone: laws that the figures of every job keep, tried on
// random jobs, and solves of their own that the figures have to meet.
package laws
