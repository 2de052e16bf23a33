// Package door is the way into the library from other languages: functions by
// name or number, plain numbers and JSON in and out. The native and the browser
// build are thin mains around it.
package door
