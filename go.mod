module finwright

go 1.26
