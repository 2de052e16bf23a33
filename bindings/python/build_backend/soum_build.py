"""Builds the package: a wheel with the native library in it, or a source
archive with the library's source. Needs Go and a C compiler, and no package.

    pip install ./bindings/python

--config-settings tags=TAGS hands build tags to Go.
"""

import base64
import hashlib
import io
import os
import re
import shutil
import subprocess
import sys
import sysconfig
import tarfile
import tempfile
import zipfile

HERE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
STAGED = os.path.join(HERE, "go")  # the module's source, in a source archive
PACKAGE = "./bindings/internal/door/native"
GENERATOR = "./bindings/internal/bindgen"
LIBRARY = {"win32": "soum.dll", "darwin": "libsoum.dylib"}.get(sys.platform, "libsoum.so")


def _project():
    """Reads the few lines of pyproject.toml that are needed."""
    with open(os.path.join(HERE, "pyproject.toml"), encoding="utf-8") as file:
        text = file.read()
    return {
        key: re.search(rf'^{key} = "(.*)"$', text, re.MULTILINE).group(1)
        for key in ("name", "version", "description", "requires-python")
    }


def _module():
    """Where the Go module is: staged beside the package, or around it."""
    if os.path.isfile(os.path.join(STAGED, "go.mod")):
        return STAGED
    root = os.path.dirname(os.path.dirname(HERE))
    if os.path.isdir(os.path.join(root, "bindings", "internal", "door", "native")):
        return root
    raise SystemExit(f"soum: the Go source is neither in {STAGED} nor around {HERE}")


def _run(arguments, directory, **environment):
    if shutil.which(arguments[0]) is None:
        raise SystemExit(f"soum: {arguments[0]} is not installed; building the library needs Go, see https://go.dev")
    return subprocess.run(
        arguments, cwd=directory, env={**os.environ, **environment}, check=True, stdout=subprocess.PIPE, text=True
    ).stdout


def build_library(path, tags=""):
    """Builds the native library into a file."""
    module = _module()
    flags = "-s -w"
    with tempfile.TemporaryDirectory() as work:
        if sys.platform.startswith("linux"):
            exported = os.path.join(work, "exported.map")
            with open(exported, "w", encoding="ascii") as file:
                file.write("{ global: soum_*; local: *; };\n")
            flags += f" -extldflags=-Wl,--version-script={exported}"
        command = ["go", "build", "-buildmode=c-shared", "-trimpath", "-buildvcs=false", "-ldflags=" + flags]
        if tags:
            command += ["-tags", tags]
        built = os.path.join(work, LIBRARY)
        _run(command + ["-o", built, PACKAGE], module, CGO_ENABLED="1")
        shutil.copyfile(built, path)


def stage(target):
    """Copies what the library is built from, with the modules it needs."""
    module = _module()
    if module == STAGED:
        shutil.copytree(STAGED, target)
        return
    form = "{{if not .Standard}}{{.Dir}}{{end}}"
    for directory in _run(["go", "list", "-deps", "-f", form, PACKAGE], module, CGO_ENABLED="1").split():
        inside = os.path.relpath(directory, module)
        if inside.startswith(".."):
            continue  # another module's: vendored below
        os.makedirs(os.path.join(target, inside), exist_ok=True)
        for name in sorted(os.listdir(directory)):
            if name.endswith(".go") and not name.endswith("_test.go"):
                shutil.copyfile(os.path.join(directory, name), os.path.join(target, inside, name))
    for name in ("go.mod", "go.sum", "LICENSE"):
        shutil.copyfile(os.path.join(module, name), os.path.join(target, name))
    _run(["go", "mod", "vendor"], target, GOFLAGS="-mod=mod")


def _sources():
    """The package's files by name: those of this folder, and beside them, unless a
    source archive has them already, the wrappers that are made from the library's
    declarations."""
    files = _folder(os.path.join(HERE, "soum"))
    if _module() != STAGED:
        with tempfile.TemporaryDirectory() as work:
            _run(["go", "run", GENERATOR, "-language", "python", "-out", work], _module())
            files.update(_folder(os.path.join(work, "soum")))
    return dict(sorted(files.items()))


def _folder(folder):
    """The package's files of a folder."""
    files = {}
    for name in os.listdir(folder):
        if name.endswith((".py", ".pyi")) or name == "py.typed":
            with open(os.path.join(folder, name), "rb") as file:
                files[name] = file.read()
    return files


def _metadata():
    project = _project()
    with open(os.path.join(HERE, "README.md"), encoding="utf-8") as file:
        readme = file.read()
    return (
        "Metadata-Version: 2.1\n"
        f"Name: {project['name']}\nVersion: {project['version']}\nSummary: {project['description']}\n"
        f"License: MIT\nRequires-Python: {project['requires-python']}\n"
        "Provides-Extra: arrays\nRequires-Dist: numpy; extra == 'arrays'\n"
        f"Description-Content-Type: text/markdown\n\n{readme}"
    )


def _tag():
    platform = re.sub(r"[-.]", "_", sysconfig.get_platform())
    return f"py3-none-{platform}"


def build_wheel(wheel_directory, config_settings=None, metadata_directory=None):
    project = _project()
    base = f"{project['name']}-{project['version']}"
    info = base + ".dist-info"
    name = f"{base}-{_tag()}.whl"
    files = {}
    for source, content in _sources().items():
        files["soum/" + source] = content
    with tempfile.TemporaryDirectory() as work:
        built = os.path.join(work, LIBRARY)
        build_library(built, (config_settings or {}).get("tags", ""))
        with open(built, "rb") as file:
            files["soum/" + LIBRARY] = file.read()
    files[info + "/METADATA"] = _metadata().encode()
    files[info + "/WHEEL"] = f"Wheel-Version: 1.0\nGenerator: soum_build\nRoot-Is-Purelib: false\nTag: {_tag()}\n".encode()
    with open(os.path.join(_module(), "LICENSE"), "rb") as file:
        files[info + "/LICENSE"] = file.read()
    record = []
    with zipfile.ZipFile(os.path.join(wheel_directory, name), "w", zipfile.ZIP_DEFLATED) as archive:
        for path, content in files.items():
            digest = base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
            record.append(f"{path},sha256={digest},{len(content)}")
            _add(archive, path, content)
        record.append(f"{info}/RECORD,,")
        _add(archive, info + "/RECORD", ("\n".join(record) + "\n").encode())
    return name


def _add(archive, path, content):
    entry = zipfile.ZipInfo(path, (1980, 1, 1, 0, 0, 0))
    entry.external_attr = 0o644 << 16
    entry.compress_type = zipfile.ZIP_DEFLATED
    archive.writestr(entry, content)


def build_sdist(sdist_directory, config_settings=None):
    project = _project()
    base = f"{project['name']}-{project['version']}"
    name = base + ".tar.gz"
    with tempfile.TemporaryDirectory() as work, tarfile.open(
        os.path.join(sdist_directory, name), "w:gz", format=tarfile.PAX_FORMAT
    ) as archive:
        archive.add(os.path.join(HERE, "pyproject.toml"), base + "/pyproject.toml")
        archive.add(os.path.join(HERE, "README.md"), base + "/README.md")
        archive.add(os.path.abspath(__file__), base + "/build_backend/soum_build.py")
        for source, content in _sources().items():
            _put(archive, f"{base}/soum/{source}", content)
        staged = os.path.join(work, "go")
        stage(staged)
        archive.add(staged, base + "/go")
        _put(archive, base + "/PKG-INFO", _metadata().encode())
    return name


def _put(archive, path, content):
    entry = tarfile.TarInfo(path)
    entry.size = len(content)
    archive.addfile(entry, io.BytesIO(content))


if __name__ == "__main__":
    if len(sys.argv) < 2 or sys.argv[1] not in ("sdist", "wheel", "library"):
        raise SystemExit("usage: soum_build.py sdist DIRECTORY | wheel DIRECTORY | library FILE [TAGS]")
    if sys.argv[1] == "library":
        build_library(*sys.argv[2:])
    else:
        build = build_sdist if sys.argv[1] == "sdist" else build_wheel
        print(build(sys.argv[2]))
