package main

import "go/ast"

// neighbours maps each name of a list that is declared together, such as the
// fields of X, Z float64, to the next one of it: of one type, and taken for each
// other.
func neighbours(fields *ast.FieldList) map[string]string {
	next := map[string]string{}
	if fields == nil {
		return next
	}
	for _, list := range fields.List {
		for i, name := range list.Names {
			if other := list.Names[(i+1)%len(list.Names)].Name; len(list.Names) > 1 && name.Name != "_" && other != "_" {
				next[name.Name] = other
			}
		}
	}
	return next
}

// fieldsOf returns the neighbours among the fields of all structs of some files.
func fieldsOf(trees []*ast.File) map[string]string {
	all := map[string]string{}
	for _, tree := range trees {
		ast.Inspect(tree, func(n ast.Node) bool {
			if s, ok := n.(*ast.StructType); ok {
				for name, next := range neighbours(s.Fields) {
					all[name] = next
				}
			}
			return true
		})
	}
	return all
}

// parameters changes each use of a parameter or a named result to its neighbour.
func (p *planter) parameters(f *ast.FuncType, body *ast.BlockStmt) {
	if body == nil {
		return
	}
	for _, fields := range []*ast.FieldList{f.Params, f.Results} {
		next := neighbours(fields)
		var visit func(n ast.Node) bool
		visit = func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.SelectorExpr:
				ast.Inspect(n.X, visit)
				return false
			case *ast.KeyValueExpr:
				ast.Inspect(n.Value, visit)
				return false
			case *ast.Ident:
				if other, ok := next[n.Name]; ok {
					p.changeNode("name", n, other)
				}
			}
			return true
		}
		ast.Inspect(body, visit)
	}
}
