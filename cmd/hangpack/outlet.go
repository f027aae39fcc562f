package main

import (
	"cmp"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// An outlet is where a pack goes.
type outlet struct {
	name   string      // as the user gave it
	info   os.FileInfo // of what is there; nil where nothing is
	screen bool
	stdout *stream // nil where it goes to a file

	base   string      // the file's own name, links followed
	folder os.FileInfo // that it stands in; nil where there is none
}

// outlet is where the call's pack goes: standard output also where it is named
// as a file, since the summary must not get into the pack.
func (c *call) outlet() outlet {
	name, given := c.flags["o"]
	if !given {
		name = strings.TrimSuffix(c.operand(), filepath.Ext(c.operand())) + c.chosenSuffix() + ".pdf"
	}
	info, err := os.Stat(name)
	if name == "-" || err == nil && c.stdout.info != nil && os.SameFile(info, c.stdout.info) {
		return outlet{name: "standard output", info: c.stdout.info, screen: c.stdout.terminal, stdout: c.stdout}
	}
	return fileOutlet(name)
}

// chosenSuffix tells a file of chosen sheets from that of the whole pack, which it
// must not replace unasked: '-pins-SL'.
func (c *call) chosenSuffix() (suffix string) {
	for _, flag := range []string{"only", "stack"} {
		if c.has(flag) {
			suffix += "-" + strings.NewReplacer(",", "-", " ", "", "/", "", "\\", "").Replace(c.flags[flag])
		}
	}
	return suffix
}

// fileOutlet is a file, which may be there already.
func fileOutlet(name string) outlet {
	dir, base := filepath.Split(followed(name))
	out := outlet{name: name, base: base}
	out.folder, _ = os.Stat(cmp.Or(dir, "."))
	if info, err := os.Stat(name); err == nil {
		out.info, out.screen = info, isTerminal(info)
	}
	return out
}

// sameAs reports whether two places are one file, links and other spellings seen
// through. Names that differ in their capitals alone are one where nothing is there
// yet: many disks take them for one.
func (out outlet) sameAs(other outlet) bool {
	if out.info != nil && other.info != nil {
		return os.SameFile(out.info, other.info)
	}
	return strings.EqualFold(out.base, other.base) && out.sameFolder(other)
}

func (out outlet) sameFolder(other outlet) bool {
	if out.folder == nil && other.folder == nil {
		return filepath.Dir(out.name) == filepath.Dir(other.name)
	}
	return os.SameFile(out.folder, other.folder)
}

// aside is where that is said which must not get into the pack.
func (c *call) aside(out outlet) *stream {
	if out.stdout != nil {
		return c.stderr
	}
	return c.stdout
}

// refuses says why no pack goes there whatever the job, which may be one among
// several.
func (out outlet) refuses(among bool) error {
	if out.screen {
		return errors.New("a PDF is not for a terminal; name a file with -o, or send it on with > or |")
	}
	if among && out.stdout != nil {
		return errors.New("its pack would go to the file that standard output goes to; send that elsewhere")
	}
	return nil
}

// clash says which of the files that a pack is made of it would overwrite; the
// job comes first among them. Links and other spellings of a name are seen
// through.
func (out outlet) clash(files []string) error {
	for i, file := range files {
		info, err := os.Stat(file)
		switch {
		case err != nil || out.info == nil || !os.SameFile(info, out.info):
		case i == 0:
			return fmt.Errorf("%s is the job itself; name another file with -o", out.name)
		case out.name == file:
			return fmt.Errorf("%s is read for it; name another file with -o", out.name)
		default:
			return fmt.Errorf("%s is %s, which the job reads; name another file with -o", out.name, file)
		}
	}
	return nil
}
