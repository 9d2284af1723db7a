package measure

// retentionPoints say what holds a flange on its shaft end.
var retentionPoints = []Point{
	{Key: "retainer.kind", Group: GroupRetention, Quantity: Answer, Low: 1, High: 2, Caution: CautionWeld,
		Codes:    []Code{{1, "thread of the shaft"}, {2, "welded stud"}},
		Question: "Does the flange hang on a thread cut into the shaft, or on a stud welded to it?",
		Place:    "Look for a weld at the shaft's end. A stud welded to a hardened shaft can't be made good."},
	{Key: "retainer.thread", Group: GroupRetention, Quantity: Length, Low: 6, High: 60, Caution: CautionWeld,
		Question: "Nominal diameter of the thread that holds the flange?",
		Place:    "Caliper over the thread, rounded up to its nominal size."},
	{Key: "retainer.pitch", Group: GroupRetention, Quantity: Length, Low: 0.5, High: 4.5, Caution: CautionWeld,
		Question: "Pitch of that thread, from crest to crest?",
		Place:    "Thread gauge, or over ten crests divided by ten. Inch threads: 25.4 divided by threads per inch."},
	{Key: "retainer.grade", Group: GroupRetention, Quantity: Text, Basis: Stated, Caution: CautionWeld, Sample: "10.9",
		Question: "Which strength grade is marked on the bolt or nut?",
		Place:    "On the head of the bolt or the face of the nut."},
	{Key: "retainer.torque", Group: GroupRetention, Quantity: Torque, Low: 10, High: 1200, Caution: CautionWeld,
		Question: "To which torque will it be tightened?",
		Place:    "As set on the torque wrench, less the running torque of a self-locking nut."},
	{Key: "retainer.reach", Group: GroupRetention, Quantity: Length, Low: 2, High: 80, Caution: CautionWeld,
		Question: "Over which length does the nut or bolt really hold thread?",
		Place:    "Full threads in engagement with everything in place; count neither chamfer nor run-out."},
	{Key: "retainer.nut_factor", Group: GroupRetention, Quantity: Factor, Low: 0.08, High: 0.4, Basis: Stated, Caution: CautionWeld,
		Question: "Which nut factor goes with this thread and its lubrication?",
		Place:    "From a book or the fastener's maker; sources differ by a third."},
}
