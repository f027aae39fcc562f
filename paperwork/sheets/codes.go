package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
)

// codeHead is what every code that carries text begins with: which stack, which
// revision, which job. It is in the letters of a QR code's alphanumeric mode.
func codeHead(h *rig.Hung) string {
	return strings.ToUpper(fmt.Sprintf("%s REV %s %s", h.ID, h.Job.Revision, h.Job.Fingerprint))
}

// pinText is the pick holes and the holes of cabinets from to, both counted
// from 1, as a phone shows them with no network: 'SL REV B 3F9A1C07 PICK 22
// 1:0 2:0.5'.
func pinText(h *rig.Hung, from, to int) string {
	parts := []string{codeHead(h), "PICK"}
	for _, hole := range h.Holes {
		parts = append(parts, h.Label(hole).Text)
	}
	for n := from; n <= to; n++ {
		parts = append(parts, fmt.Sprintf("%d:%s", n, h.Cabinets[n-1].Hole.Label))
	}
	return strings.Join(parts, " ")
}

// heldText is all that the code of a held stack says: no pins.
func heldText(h *rig.Hung) string { return codeHead(h) + " DO NOT FLY" }

// codeOf is a stack's code on the cover and on its pin sheet: the job's address
// with page and stack filled in, or without one all pins as text.
func codeOf(h *rules.Checked) paper.Code {
	switch {
	case h.Held():
		return paper.Code{Text: heldText(h.Hung), To: pinTarget(h.Hung)}
	case h.Job.URL == "":
		return paper.Code{Text: pinText(h.Hung, 1, len(h.Cabinets)), To: pinTarget(h.Hung)}
	}
	return paper.Code{Text: addressOf(h.Hung), To: pinTarget(h.Hung)}
}

// addressOf is the job's address for this stack. An address without placeholders
// gets the page as a fragment. Source: RFC 8118, section 3 (page=).
func addressOf(h *rig.Hung) string {
	url := h.Job.URL
	if !strings.Contains(url, "{page}") && !strings.Contains(url, "{stack}") {
		return url + "#page={page}"
	}
	return strings.ReplaceAll(url, "{stack}", h.ID)
}
