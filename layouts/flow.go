package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// revHead is a plain head with the revision large at its right.
func revHead(name, says string) func(c *paper.Canvas, room mm.Box, which string) mm.Box {
	return headOf(name, func(c *paper.Canvas, room mm.Box) {
		c.Right(room.Right(), room.Y+2.6, paper.Small, says)
		c.Right(room.Right(), room.Y+10.4, paper.Bold(18), "REV "+c.Revision)
	})
}

// plainHead is the head of a sheet that belongs to no stack.
func plainHead(name, says string) func(c *paper.Canvas, room mm.Box, which string) mm.Box {
	return headOf(name, func(c *paper.Canvas, room mm.Box) { c.Right(room.Right(), room.Y+9, paper.Small, says) })
}

// headOf is a sheet's name over a rule, with what stands at its right.
func headOf(name string, right func(c *paper.Canvas, room mm.Box)) func(c *paper.Canvas, room mm.Box, which string) mm.Box {
	return func(c *paper.Canvas, room mm.Box, which string) mm.Box {
		const height = 16.0
		if c != nil {
			c.In("head", mm.BoxAt(room.X, room.Y, room.W, height), func() {
				c.Text(room.X, room.Y+9, paper.Title, name+which)
				right(c, room)
				c.Line(room.X, room.Y+12.5, room.Right(), room.Y+12.5, paper.Heavy)
			})
		}
		return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
	}
}
