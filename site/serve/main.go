// Command serve hands out the built page on this machine: the right types, headers and packed copies, and nothing outside its folder.
package main

import (
	"errors"
	"flag"
	"fmt"
	"net"
	"net/http"
	"os"
	"time"
)

func main() {
	folder := flag.String("dir", "site/dist", "folder of the built page")
	port := flag.Int("port", 8080, "port on 127.0.0.1; 0 takes a free one")
	flag.Parse()
	if err := serve(*folder, *port); err != nil {
		fmt.Fprintln(os.Stderr, "serve:", err)
		os.Exit(1)
	}
}

func serve(folder string, port int) error {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return fmt.Errorf("%w; build the page first (make build)", err)
	}
	defer root.Close()
	if _, err := root.Stat("index.html"); err != nil {
		return errors.New("there is no index.html in " + folder + "; build the page first (make build)")
	}
	listener, err := net.Listen("tcp", fmt.Sprintf("127.0.0.1:%d", port))
	if err != nil {
		return fmt.Errorf("%w; choose another port with -port", err)
	}
	fmt.Printf("Lowspot is at http://%s/ (stop it with Ctrl-C)\n", listener.Addr())
	server := &http.Server{Handler: handler{root}, ReadHeaderTimeout: 10 * time.Second}
	return server.Serve(listener)
}
