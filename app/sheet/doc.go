// Package sheet makes what a shaft builder gets: one document to build from.
//
// Make turns a build and its findings into a Sheet, which is data: headings, facts, tables and drawings
// in the order in which a builder needs them, every number with its unit, its doubt and where it comes
// from. Text, HTML and PDF write the same Sheet, so that no form says what another does not.
//
// What nobody read is printed as not read. Stated, estimated and computed values carry that word. As
// long as anything that the shaft needs is waiting or rests on computed states alone, the first line
// of every form reads NOT FOR MANUFACTURE.
//
// The same build gives the same bytes: no clock goes in, dates are those of the newest record.
package sheet
