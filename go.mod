module hangpack

go 1.26.0

require (
	github.com/go-pdf/fpdf v0.9.0
	github.com/makiuchi-d/gozxing v0.1.1
	github.com/pdfcpu/pdfcpu v0.15.0
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.2
	github.com/skip2/go-qrcode v0.0.0-20200617195104-da1b6568686e
	github.com/stretchr/testify v1.12.1
	golang.org/x/image v0.47.0
	gonum.org/v1/gonum v0.17.0
	gopkg.in/yaml.v3 v3.0.1
)

require (
	github.com/clipperhouse/uax29/v2 v2.7.0 // indirect
	github.com/hhrutter/tiff v1.0.6 // indirect
	github.com/mattn/go-runewidth v0.0.27 // indirect
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/crypto v0.54.0 // indirect
	golang.org/x/text v0.43.0 // indirect
	golang.org/x/xerrors v0.0.0-20200804184101-5ec99f83aff1 // indirect
)
