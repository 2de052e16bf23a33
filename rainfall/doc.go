// Package rainfall holds the arithmetic of rain and grass.
package rainfall
