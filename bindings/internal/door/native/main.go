// Command native is the library behind a C interface: build it with
// -buildmode=c-shared or c-archive. bindings/c/soum.h tells who owns what.
package main

import "C"

import (
	"unsafe"

	"example.org/soum/bindings/internal/door"
)

func main() {}

// soum_abi gives the version of this interface and the number of this build's
// manifest: a wrapper made from another manifest must not call.
//
//export soum_abi
func soum_abi(version *int32) {
	v := unsafe.Slice(version, 2)
	v[0], v[1] = door.ABI, door.Manifest
}

// soum_eval computes formula fn over n rows.
//
//export soum_eval
func soum_eval(fn *int32, args *float64, strides *int32, n *int32, out *float64, status *int32) {
	if *n <= 0 {
		return
	}
	rows := int(*n)
	steps := unsafe.Slice(strides, door.Arguments(int(*fn)))
	door.Eval(int(*fn), unsafe.Slice(args, door.Columns(steps, rows)), steps, unsafe.Slice(out, rows), unsafe.Slice(status, rows))
}

// soum_call calls a function by name, JSON in and out. The answer is written
// as far as there is room; outlen then holds its whole length.
//
//export soum_call
func soum_call(name *uint8, in *uint8, inlen *int32, out *uint8, outlen *int32, status *int32) {
	answer, code := door.Call(text(name), unsafe.Slice(in, max(0, *inlen)))
	room := max(0, *outlen)
	*outlen, *status = int32(len(answer)), code
	copy(unsafe.Slice(out, room), answer)
}

// longestName bounds the search for the end of a name.
const longestName = 200

// text copies a C string.
func text(name *uint8) string {
	for n := range longestName {
		if *(*uint8)(unsafe.Add(unsafe.Pointer(name), n)) == 0 {
			return string(unsafe.Slice(name, n))
		}
	}
	return ""
}
