// Command server serves the built page on this machine.
package main

import (
	"errors"
	"flag"
	"fmt"
	"log"
	"net"
	"net/http"
	"os"
	"strconv"
	"syscall"
	"time"

	"finwright/site/static"
)

func main() {
	address := flag.String("addr", "127.0.0.1:8080", "address to listen on; a taken port gives way to the next free one")
	folder := flag.String("dir", "site/dist", "folder to serve")
	base := flag.String("base", "/", "path to serve it under, with a slash at both ends")
	flag.Parse()

	listener, err := listen(*address)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("Finwright is at http://%s%s (Ctrl-C ends)\n", listener.Addr(), *base)
	server := &http.Server{Handler: static.Host{Base: *base}.Handler(os.DirFS(*folder)), ReadHeaderTimeout: 10 * time.Second}
	log.Fatal(server.Serve(listener))
}

// listen takes the first free port from the one asked for.
func listen(address string) (net.Listener, error) {
	host, first, err := net.SplitHostPort(address)
	if err != nil {
		return nil, err
	}
	port, err := strconv.Atoi(first)
	if err != nil {
		return nil, err
	}
	for last := port + 20; ; port++ {
		listener, err := net.Listen("tcp", net.JoinHostPort(host, strconv.Itoa(port)))
		if err == nil || port == last || !errors.Is(err, syscall.EADDRINUSE) {
			return listener, err
		}
	}
}
