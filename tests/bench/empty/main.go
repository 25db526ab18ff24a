// Command empty is the smallest Go program: what the engine's size and start in a browser are measured against.
package main

func main() {}
