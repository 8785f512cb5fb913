package main

import (
	"html/template"

	"finwright/core/message"
)

// pageFunctions gives the pages their words: msg is the English text of a key.
var pageFunctions = template.FuncMap{"msg": message.English.Text}

func pageData() any { return nil }
