package main

import (
	"fmt"
	"io"

	"lowspot/engine"
	"lowspot/rules"
)

// writeText writes a plan for people.
func writeText(out io.Writer, job *engine.Job, plan *engine.Plan) error {
	p := &printer{out: out}
	name := job.Name
	if name == "" {
		name = "Job without a name"
	}
	p.line("%s", name)
	p.problems(plan)
	for i := range plan.Rooms {
		p.room(&plan.Rooms[i])
	}
	t := plan.Totals
	p.line("")
	if t.Ready {
		p.line("Buy        %d bags of %s (%s each when mixed; %.2f worked out with waste)", t.Bags, t.BagMass.Text, t.BagYield.Text, t.BagsExact)
		p.line("Water      %s a bag (%s to %s), %s in all", t.BagWater.Text, t.WaterLeast.Text, t.WaterMost.Text, t.Water.Text)
		p.line("Carry      %s of powder; %s with its water", t.Powder.Text, t.Load.Text)
	} else {
		p.line("Bags       not known yet: a room has no outline or no readings")
	}
	p.findings(plan)
	return p.err
}

// printer writes lines until one fails.
type printer struct {
	out io.Writer
	err error
}

func (p *printer) line(format string, values ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.out, format+"\n", values...)
	}
}

func (p *printer) problems(plan *engine.Plan) {
	for _, problem := range plan.Problems {
		p.line("  ! %s: %s %s", problem.Field, problem.Message, problem.Remedy)
	}
}

func (p *printer) room(r *engine.RoomPlan) {
	p.line("")
	p.line("%s", r.Name)
	if !r.Drawn {
		p.line("  has no outline yet")
		return
	}
	p.line("  floor    %s, %s round", r.Area.Text, r.Perimeter.Text)
	if r.Pour == nil {
		p.line("  has no readings yet")
		return
	}
	d := r.Pour.Depths
	p.line("  plane    staff reads %s on the finished pour", r.Plane.Staff.Text)
	p.line("  depth    %s least, %s mean, %s greatest", d.Least.Text, d.Mean.Text, d.Greatest.Text)
	p.line("  pour     %s", r.Pour.Volume.Text)
}

func (p *printer) findings(plan *engine.Plan) {
	p.line("")
	kept := 0
	for _, f := range plan.Findings {
		switch f.State {
		case rules.Broken:
			p.line("%-6s %s%s", f.Weight, where(f), f.Says)
			p.line("       %s", f.Remedy)
		case rules.Faulty:
			p.line("fault  %s: %v", f.Rule, f.Fault)
		case rules.Kept:
			kept++
		}
	}
	p.line("%d checks kept", kept)
	for _, q := range plan.Questions {
		p.line("ask    %s%s", subject(q.Subject), q.Question)
	}
}

func where(f engine.Finding) string { return subject(f.Subject) }

func subject(s engine.Subject) string {
	if s.Name == "" {
		return ""
	}
	return s.Name + ": "
}
