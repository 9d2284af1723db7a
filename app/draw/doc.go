// Package draw turns a build into pictures that can be looked at: the shaft line from the side and
// from above, the clutch in section, the mounts from above, the ends, and the travel as a chart.
//
// A Scene is made once for a build. Its View gives a Drawing: lines, arcs, outlines and labels in
// millimetres of the drawing's own space, x to the right and y up, the front of the vehicle on the
// left. Lay puts a Drawing on a page of some width and finds a place for every label; the page is
// written as SVG, as PNG, or drawn by whoever holds it. One unit of a page is 1/160 inch, as big on a
// telephone as on paper.
//
// Charts are plotted by gonum.org/v1/plot on a canvas of our own, the ledger, which writes lines, areas,
// dots and texts down as shapes, signs and labels of a Drawing: so they lie on every page like any other
// view, with our styles and our rule for labels. Its choice of ticks and its fonts are left unused: the
// first takes logarithms that differ between processors, the second would not match the page's.
//
// What was read is drawn in full lines, its doubt as a band, what is computed dashed, what only shows
// where a part is in thin grey. What nobody read is not drawn: a line under the picture names it.
//
// Labels keep clear of each other by one rule. They come in the order of their rank. Each takes the
// first free place of those around its anchor, the liked side first, where its box touches no other
// label, no leader and no line of the drawing. Where all are taken it goes to the nearest row of the
// shelf above or below the picture and gets a leader, as long as that crosses no label and no other
// leader. Where that fails too, a letter stands at the anchor and a key below the picture explains it.
package draw
