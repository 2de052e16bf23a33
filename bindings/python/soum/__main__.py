"""Tells the version and the native library: python -m soum."""

from . import _core, _manifest


def main():
    library = _core.load()
    print(f"soum {_manifest.VERSION}, manifest {_manifest.NUMBER}, interface {_manifest.ABI}")
    print(f"library {library.path}")


if __name__ == "__main__":
    main()
