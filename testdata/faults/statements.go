package main

import (
	"go/ast"
	"go/token"
)

func (p *planter) statement(n ast.Stmt) {
	switch n := n.(type) {
	case *ast.IfStmt:
		p.condition(n.Cond)
	case *ast.ForStmt:
		if n.Cond != nil {
			p.changeNode("condition", n.Cond, "(false && ("+p.text(n.Cond)+"))")
		}
	case *ast.SwitchStmt:
		if n.Tag == nil {
			p.cases(n)
		}
	case *ast.IncDecStmt:
		p.change("operator", n.TokPos, n.End(), operators[n.Tok]...)
		p.changeNode("statement dropped", n, "")
	case *ast.ExprStmt:
		p.changeNode("statement dropped", n, "")
	case *ast.AssignStmt:
		p.assignment(n)
	case *ast.ReturnStmt:
		p.results(n)
	case *ast.BranchStmt:
		p.changeNode("statement dropped", n, "")
	}
}

// condition forces a condition either way, its variables still in use.
func (p *planter) condition(n ast.Expr) {
	p.changeNode("condition", n, "(true || ("+p.text(n)+"))", "(false && ("+p.text(n)+"))")
}

func (p *planter) cases(n *ast.SwitchStmt) {
	for _, c := range n.Body.List {
		for _, e := range c.(*ast.CaseClause).List {
			p.condition(e)
		}
	}
}

// assignment changes its operator, drops it, and swaps what two results of one
// call, or two values, go to.
func (p *planter) assignment(n *ast.AssignStmt) {
	p.change("operator", n.TokPos, n.TokPos+token.Pos(len(n.Tok.String())), operators[n.Tok]...)
	if n.Tok != token.DEFINE {
		p.changeNode("statement dropped", n, "")
	}
	for i := 1; i < len(n.Lhs); i++ {
		p.swap("what results go to", n.Lhs[i-1], n.Lhs[i])
	}
}

// results change the sign of each returned value; those that have none do not
// build.
func (p *planter) results(n *ast.ReturnStmt) {
	for i, r := range n.Results {
		if p.text(r) == "true" || p.text(r) == "false" {
			p.changeNode("returned value", r, map[string]string{"true": "false", "false": "true"}[p.text(r)])
			continue
		}
		if lit, ok := r.(*ast.BasicLit); ok && (lit.Value == "0" || lit.Kind == token.STRING) || p.text(r) == "nil" {
			continue
		}
		p.changeNode("sign of a returned value", r, "-("+p.text(r)+")")
		if i > 0 {
			p.swap("returned values", n.Results[i-1], r)
		}
	}
}
