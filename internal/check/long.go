package check

import "os"

// Long reports whether tests are to run at their larger size, as ./test -long asks.
func Long() bool { return os.Getenv("SOUM_LONG") != "" }
