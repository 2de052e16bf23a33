// Package herd holds the arithmetic of the animals.
package herd
