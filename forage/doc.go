// Package forage holds the arithmetic of standing grass.
package forage
