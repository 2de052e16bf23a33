// Package grazing holds the arithmetic of the rotation.
package grazing
