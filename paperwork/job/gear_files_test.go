package job

import (
	"errors"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// shelf opens gear files from a map.
func shelf(files map[string]string) Opener {
	return func(path string) (io.ReadCloser, error) {
		if text, ok := files[path]; ok {
			return io.NopCloser(strings.NewReader(text)), nil
		}
		return nil, errors.New("no such file")
	}
}

// TestGearInAFile: the gear of a job says the same in a gear file, whether all
// of it stands there or a part, and the files are looked for beside the job.
func TestGearInAFile(t *testing.T) {
	whole := base(t)
	want, complaints := readText(whole)
	require.Empty(t, complaints)
	head, rest, _ := strings.Cut(whole, "gear:\n")
	gear, stacks, _ := strings.Cut(rest, "stacks:\n")
	cabinets, others, _ := strings.Cut(gear, "  bars:\n")
	for name, text := range map[string]string{
		"all":  head + "gear_files: [shop/all.yaml]\nstacks:\n" + stacks,
		"part": head + "gear_files: [shop/cabinets.yaml]\ngear:\n  bars:\n" + others + "stacks:\n" + stacks,
		"two":  head + "stacks:\n" + stacks + "gear_files: [shop/cabinets.yaml, ./shop/../shop/others.yaml]\n",
	} {
		files := map[string]string{
			"show/shop/all.yaml":      "gear:\n" + gear,
			"show/shop/cabinets.yaml": "gear:\n" + cabinets,
			"show/shop/others.yaml":   "gear:\n  bars:\n" + others,
		}
		got, complaints := Read("show/job.yaml", strings.NewReader(text), shelf(files), latin)
		require.Empty(t, complaints, name)
		assert.NotEmpty(t, got.GearFiles)
		assert.NotEqual(t, want.Fingerprint, got.Fingerprint, "the names of gear files are given too")
		got.GearFiles, got.Fingerprint = nil, want.Fingerprint
		assert.Equal(t, want, got, name)
	}
}

// TestFingerprintSeesGearFiles: what a gear file says counts as if the job said
// it; its comments and order do not.
func TestFingerprintSeesGearFiles(t *testing.T) {
	_, gear, _ := strings.Cut(least, "gear:\n")
	gear, _, _ = strings.Cut(gear, "stacks:\n")
	text := strings.Replace(least, "gear:\n"+gear, "gear_files: [g.yaml]\n", 1)
	of := func(gear string) string {
		j, complaints := Read("job.yaml", strings.NewReader(text), shelf(map[string]string{"g.yaml": gear}), latin)
		require.Empty(t, complaints)
		return j.Fingerprint
	}
	want := of("gear:\n" + gear)
	assert.Equal(t, want, of("# The shop's.\ngear: # all of it\n"+with(t, gear, "mass: 20 kg", "mass: 0.02 t")))
	assert.NotEqual(t, want, of("gear:\n"+with(t, gear, "mass: 20 kg", "mass: 21 kg")))
	assert.NotEqual(t, want, of("gear:\n"+with(t, gear, "link_arm: 280 mm", "link_arm: 280 mm\n      source: weighed")))
}

// TestGearFileLimits: a gear file is read no further than a job is.
func TestGearFileLimits(t *testing.T) {
	text := strings.Replace(least, "gear:\n", "gear_files: [big.yaml]\ngear:\n", 1)
	for size, want := range map[int]string{
		sizeMost:     "big.yaml:1:1: the gear file is empty; write its section gear",
		sizeMost + 1: "big.yaml:1:1: the file is larger than 1 MiB; it should be a few pages of text",
	} {
		_, complaints := Read("job.yaml", strings.NewReader(text), shelf(map[string]string{"big.yaml": strings.Repeat("#", size)}), latin)
		assert.Equal(t, want, complaints.Error())
	}
}

// TestOrigins: where figures come from is read of every kind of gear.
func TestOrigins(t *testing.T) {
	j, complaints := readText(with(t, base(t),
		"      link_pushes: no\n", "      link_pushes: no\n      source: data_sheet\n      as_of: 2027-03-01\n",
		"deck_height: 180 mm}", "deck_height: 180 mm, source: label}",
		"headroom: 500 mm}", "headroom: 500 mm, source: estimate, as_of: 2026-01-31}"))
	require.Empty(t, complaints)
	s := j.Stacks[0]
	assert.Equal(t, Origin{"data_sheet", "2027-03-01"}, s.Cabinets[0].Origin)
	assert.Equal(t, Origin{"label", ""}, s.Dolly.Origin)
	assert.Equal(t, Origin{Estimate, "2026-01-31"}, s.Picks[0].Hoist.Origin)
	assert.Zero(t, s.Bar.Origin)
}
