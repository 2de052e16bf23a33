//go:build wasip1

// Command wasm is the library for JavaScript: build it with GOOS=wasip1
// GOARCH=wasm -buildmode=c-shared. It works on one scratch buffer, which the
// host fills and reads.
package main

import (
	"unsafe"

	"example.org/soum/bindings/internal/door"
)

func main() {}

var scratch []byte

// buffer gives a scratch buffer of at least so many bytes, aligned for numbers.
// Memory may have moved: the host takes a new view of it.
//
//go:wasmexport soum_buffer
func buffer(size int32) unsafe.Pointer {
	if int(size) > len(scratch) {
		words := make([]float64, (int(size)+7)/8)
		scratch = unsafe.Slice((*byte)(unsafe.Pointer(&words[0])), len(words)*8)
	}
	return unsafe.Pointer(&scratch[0])
}

//go:wasmexport soum_abi
func abi() int32 { return door.ABI }

//go:wasmexport soum_manifest
func manifest() int32 { return door.Manifest }

// eval computes formula fn over n rows. The scratch buffer holds, one after the
// other: the columns (float64), room for n results (float64), the strides
// (int32, one an argument), room for n statuses (int32). It gives 0, or -1 where
// the buffer is too small.
//
//go:wasmexport soum_eval
func eval(fn, n int32) int32 {
	if n <= 0 {
		return 0
	}
	count, rows := door.Arguments(int(fn)), int(n)
	words := len(scratch) / 8
	if words == 0 {
		return -1
	}
	numbers := unsafe.Slice((*float64)(unsafe.Pointer(&scratch[0])), words)
	// The strides stand behind the widest layout: columns of n rows each.
	at := (count + 1) * rows
	if (at+(count+rows+1)/2+1)*8 > len(scratch) {
		return -1
	}
	tail := unsafe.Slice((*int32)(unsafe.Pointer(&numbers[at])), count+rows)
	strides, status := tail[:count], tail[count:]
	door.Eval(int(fn), numbers[:door.Columns(strides, rows)], strides, numbers[count*rows:at], status)
	return 0
}

var one struct {
	arguments [8]float64
	strides   [8]int32
	out       [1]float64
	status    [1]int32
}

// eval1 computes one row without memory traffic; last gives its status.
//
//go:wasmexport soum_eval1
func eval1(fn int32, a, b, c, d, e, f, g, h float64) float64 {
	one.arguments = [8]float64{a, b, c, d, e, f, g, h}
	count := door.Arguments(int(fn))
	door.Eval(int(fn), one.arguments[:count], one.strides[:count], one.out[:], one.status[:])
	return one.out[0]
}

//go:wasmexport soum_last
func last() int32 { return one.status[0] }

var answer []byte

// call calls a function by name: the scratch buffer holds the name, then the
// JSON. The answer's length is given; its place is soum_answer's.
//
//go:wasmexport soum_call
func call(name, in int32) int32 {
	answer, one.status[0] = door.Call(string(scratch[:name]), scratch[name:name+in])
	return int32(len(answer))
}

//go:wasmexport soum_answer
func place() unsafe.Pointer { return unsafe.Pointer(unsafe.SliceData(answer)) }
