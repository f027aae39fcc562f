// Package layouts sets sheets on paper. Every figure it is given is already
// worked out, rounded and turned into words with its unit; it only places
// them. It knows nothing of jobs or statics.
//
// Each sheet is a struct of words with a method Pages, which cuts it.
package layouts
