// Package shop holds what a shop can do and what its work costs, a Capability, and the
// file that it is kept in. What is planned with one stands in the package making, what
// its lines take in the package verdict.
//
// Most figures of the trade have no published source; a doc comment says so ("common
// practice, no source", "engineering judgement, editable", "from memory").
package shop
