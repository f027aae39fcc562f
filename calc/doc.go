// Package calc works out the statics of a hung column of loudspeakers. It is
// given plain numbers and gives plain numbers back: it knows nothing of job
// files, of paper, or of text for people.
//
// Units are SI throughout: metres, kilograms, newtons, radians. Masses hang
// under G.
//
// Axes. A stack is seen from the side, in its own vertical plane: x points
// forward, where the cabinets look, and z points up; the origin is the bar's
// hinge pin. Every part also has axes of its own, from its own top hinge pin:
// behind (towards its rear) and below. A part is turned by t, positive with
// its front down:
//
//	        z                    bar turned by t > 0
//	        |                    ___
//	        |                       ‾‾‾---.___  front goes down
//	rear ---o--- front  x
//	        hinge pin
//
//	x = -behind cos t - below sin t
//	z =  behind sin t - below cos t
//
// Forces in a link and along a hinge are positive in tension.
//
// What the package leaves out: the column is rigid, chains are plumb and
// inextensible, and each link is taken to lie along the mean of its two
// bodies. These are limits of this package and not of any code of practice.
package calc
