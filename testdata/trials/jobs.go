package trials

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/plausible"
)

// EachStack asks of the stacks of random jobs.
func EachStack(t *testing.T, from int64, ask func(t *testing.T, h *rules.Checked, f worked.StackFigures)) {
	t.Helper()
	for seed := range int64(180) {
		j := OpenJob(t, Gamble(from+seed).Job())
		for i, h := range j.Stacks {
			ask(t, h, j.Figures.Stacks[i])
		}
		if t.Failed() {
			t.Fatalf("seed %d", from+seed)
		}
	}
}

// UnknownJob is the job of centres that nobody knows.
func UnknownJob(t *testing.T) string {
	t.Helper()
	return Text(t, "testdata/jobs/unknown-centres.yaml")
}

// A Gambler writes the random job of its seed; see package plausible.
type Gambler struct {
	Seed int64
	Wild bool // the longest names, ids and lists too
}

func Gamble(seed int64) *Gambler { return &Gambler{Seed: seed} }

// Job writes a whole job of up to three stacks.
func (g *Gambler) Job() string { return plausible.Job(g.Seed, g.Wild) }

// Splays are the holes of every joint of a random job, in degrees.
var Splays = plausible.Splays

// OpenJob reads a job that has no complaint.
func OpenJob(t *testing.T, yaml string) *worked.Job {
	t.Helper()
	j, complaints, err := Try(yaml, GearFile)
	require.NoError(t, err)
	require.Empty(t, complaints)
	return j
}

var jobsRead = map[string]*worked.Job{}

// ReadJobs are the examples and a few random jobs.
func ReadJobs(t *testing.T) map[string]*worked.Job {
	t.Helper()
	if len(jobsRead) > 0 {
		return jobsRead
	}
	jobs := map[string]*worked.Job{}
	for _, name := range Examples {
		jobs[name] = OpenFile(t, "examples/"+name+".yaml")
	}
	for seed := range int64(deep.Of(16, 60)) {
		jobs[fmt.Sprintf("seed %d", seed)] = OpenJob(t, Gamble(1000+seed).Job())
	}
	jobsRead = jobs
	return jobs
}

// Shared reports whether a job is one of ReadJobs, which many tests read.
func Shared(j *worked.Job) bool {
	for _, read := range jobsRead {
		if read == j {
			return true
		}
	}
	return false
}

// Plain is a job that no rule holds: eight cabinets on two dollies.
const Plain = `
job: {title: A show, venue: A hall, date: 2027-06-12, revision: A}
practice: {mass_tolerance: 5 %, dynamic_factor: 1.25}
gear:
  cabinets:
    box:
      mass: 32.5 kg
      width: 780 mm
      depth: 420 mm
      front_height: 290 mm
      back_height: 225 mm
      hinge_behind_front: 18 mm
      centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}
      link_arm: 370 mm
      splay_holes: [0, 0.5, 1, 2, 3, 4, 12]
      pin_ratings: {hinge: 6 kN, link: 4.5 kN}
  bars:
    bar:
      mass: 28 kg
      centre_of_gravity: {behind_hinge: 260 mm, above_hinge: 70 mm}
      pick_holes: {count: 41, ahead_of_hinge: 60 mm, spacing: 15 mm, above_hinge: 95 mm}
      rating: 750 kg
      pick_rating: 600 kg
      most: {box: 12}
      tilt_limit: {down: 15 deg, up: 8 deg}
      pin_ratings: {hinge: 6 kN, link: 4.5 kN}
  dollies:
    dolly: {takes: 4, mass: 24 kg, deck_height: 180 mm}
  hoists:
    hoist: {capacity: 500 kg, mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 24 m, headroom: 550 mm}
stacks:
  - id: SL
    place: {stage_left: 8.2 m, downstage: 0.6 m}
    bar: bar
    cabinets: [{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]}]
    dolly: dolly
    aim: 1 deg down
    hang: {picks: 1, hoist: hoist}
    trim: {lowest: 4.5 m}
    steel: 14 m
`

// OtherBox is a second type of cabinet.
const OtherBox = "    other: {mass: 20 kg, width: 500 mm, depth: 400 mm, front_height: 200 mm, back_height: 200 mm, " +
	"centre_of_gravity: {behind_hinge: 200 mm, below_hinge: 100 mm}, link_arm: 300 mm, splay_holes: [0]}\n"

// Edited applies edits, pairs of what stands in the job and what is to stand
// there.
func Edited(t *testing.T, edits ...string) string {
	t.Helper()
	yaml := Plain
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, yaml, edits[i])
		yaml = strings.Replace(yaml, edits[i], edits[i+1], 1)
	}
	return yaml
}

const (
	OnePick  = "{picks: 1, hoist: hoist}"
	TwoPicks = "{picks: 2, hoist: hoist, front_hole: 1, rear_hole: 41}"
)

// Found is rule and place of findings.
func Found(findings []rules.Finding) (all []string) {
	for _, f := range findings {
		all = append(all, say.Listed(f.Rule, f.Where.String()))
	}
	return all
}

// OfRules is the findings of the rules that are wanted; a job that tips over
// is held by much else besides.
func OfRules(findings []rules.Finding, want []string) (all []string) {
	for _, f := range Found(findings) {
		for _, w := range want {
			if rule, _, _ := strings.Cut(w, ","); strings.HasPrefix(f+",", rule+",") {
				all = append(all, f)
				break
			}
		}
	}
	return all
}

// Try reads a job and works it out, with a way to open its gear files.
func Try(yaml string, gear job.Opener) (*worked.Job, job.Complaints, error) {
	read, complaints := job.Read("job.yaml", strings.NewReader(yaml), gear, paper.Prints)
	if len(complaints) > 0 {
		return nil, complaints, nil
	}
	j, err := worked.Out("job.yaml", read)
	return j, nil, err
}
