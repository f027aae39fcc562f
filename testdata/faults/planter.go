package main

import (
	"go/ast"
	"go/token"
	"strings"
)

// A planter finds the faults of one file.
type planter struct {
	file   string
	source []byte
	fset   *token.FileSet
	fields map[string]string // of each field of a struct, the one that it is taken for
	found  []*fault
}

func (p *planter) offset(at token.Pos) int { return p.fset.Position(at).Offset }

func (p *planter) text(n ast.Node) string {
	return string(p.source[p.offset(n.Pos()):p.offset(n.End())])
}

// change notes that the text from one place to another may become each of some
// others.
func (p *planter) change(kind string, from, to token.Pos, now ...string) {
	at, a, b := p.fset.Position(from), p.offset(from), p.offset(to)
	for _, s := range now {
		if was := string(p.source[a:b]); s != was {
			p.found = append(p.found, &fault{file: p.file, line: at.Line, col: at.Column, kind: kind, was: was, now: s,
				text: strings.TrimSpace(lineAt(p.source, a)), source: p.source, from: a, to: b})
		}
	}
}

func (p *planter) changeNode(kind string, n ast.Node, now ...string) {
	p.change(kind, n.Pos(), n.End(), now...)
}

// swap notes that two pieces of text may change places.
func (p *planter) swap(kind string, a, b ast.Node) {
	between := string(p.source[p.offset(a.End()):p.offset(b.Pos())])
	p.change(kind, a.Pos(), b.End(), p.text(b)+between+p.text(a))
}

func (p *planter) visit(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.ImportSpec:
		return false
	case *ast.FuncDecl:
		p.parameters(n.Type, n.Body)
	case *ast.FuncLit:
		p.parameters(n.Type, n.Body)
	case *ast.SelectorExpr:
		if other, ok := p.fields[n.Sel.Name]; ok {
			p.changeNode("name", n.Sel, other)
		}
	case *ast.BinaryExpr:
		p.change("operator", n.OpPos, n.OpPos+token.Pos(len(n.Op.String())), operators[n.Op]...)
	case *ast.UnaryExpr:
		if n.Op == token.SUB || n.Op == token.NOT {
			p.changeNode("sign dropped", n, p.text(n.X))
		}
	case *ast.BasicLit:
		p.literal(n)
	case *ast.CallExpr:
		p.call(n)
	case *ast.CompositeLit:
		p.composite(n)
	case *ast.IndexExpr:
		p.changeNode("index", n.Index, "("+p.text(n.Index)+")+1", "("+p.text(n.Index)+")-1")
	case *ast.SliceExpr:
		for _, edge := range []ast.Expr{n.Low, n.High} {
			if edge != nil {
				p.changeNode("index", edge, "("+p.text(edge)+")+1", "("+p.text(edge)+")-1")
			}
		}
	case ast.Stmt:
		p.statement(n)
	}
	return true
}

// operators are what may stand in the place of another.
var operators = map[token.Token][]string{
	token.ADD: {"-"}, token.SUB: {"+"}, token.MUL: {"/"}, token.QUO: {"*"}, token.REM: {"*"},
	token.LSS: {"<=", ">="}, token.LEQ: {"<", ">"}, token.GTR: {">=", "<="}, token.GEQ: {">", "<"},
	token.EQL: {"!="}, token.NEQ: {"=="}, token.LAND: {"||"}, token.LOR: {"&&"},
	token.ADD_ASSIGN: {"-=", "="}, token.SUB_ASSIGN: {"+=", "="}, token.MUL_ASSIGN: {"/=", "="}, token.QUO_ASSIGN: {"*=", "="},
	token.INC: {"--"}, token.DEC: {"++"},
}

func (p *planter) literal(n *ast.BasicLit) {
	switch {
	case n.Kind == token.INT && n.Value == "0":
		p.changeNode("constant", n, "1")
	case n.Kind == token.INT && n.Value == "1":
		p.changeNode("constant", n, "2", "0")
	case n.Kind == token.INT:
		p.changeNode("constant", n, "("+n.Value+"+1)", "("+n.Value+"-1)")
	case n.Kind == token.FLOAT:
		p.changeNode("constant", n, "("+n.Value+"*1.01)")
	}
}

// twins are functions that are taken for each other.
var twins = map[string]string{
	"math.Sin": "math.Cos", "math.Cos": "math.Sin", "math.Asin": "math.Acos", "math.Acos": "math.Asin",
	"math.Tan": "math.Atan", "math.Atan": "math.Tan", "math.Min": "math.Max", "math.Max": "math.Min",
	"math.Floor": "math.Ceil", "math.Ceil": "math.Floor", "min": "max", "max": "min",
	"math.IsNaN": "math.Signbit",
}

// symmetric functions do not mind the order of their arguments.
var symmetric = "math.Min math.Max math.Hypot min max "

func (p *planter) call(n *ast.CallExpr) {
	name := p.text(n.Fun)
	if twin, ok := twins[name]; ok {
		p.changeNode("function", n.Fun, twin)
	}
	if name == "math.Abs" {
		p.changeNode("function", n.Fun, "")
	}
	for i := 1; i < len(n.Args) && !strings.Contains(symmetric, name+" "); i++ {
		p.swap("arguments", n.Args[i-1], n.Args[i])
	}
}

// composite swaps each two neighbours among the values of a literal.
func (p *planter) composite(n *ast.CompositeLit) {
	value := func(e ast.Expr) ast.Expr {
		if pair, ok := e.(*ast.KeyValueExpr); ok {
			return pair.Value
		}
		return e
	}
	for i := 1; i < len(n.Elts); i++ {
		a, b := value(n.Elts[i-1]), value(n.Elts[i])
		between := string(p.source[p.offset(a.End()):p.offset(b.Pos())])
		p.change("values of a literal", a.Pos(), b.End(), p.text(b)+between+p.text(a))
	}
}
