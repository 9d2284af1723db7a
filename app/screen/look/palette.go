package look

import "image/color"

// Light is the palette for daylight: ink on warm paper.
var Light = Palette{
	Paper: hex(0xF6F1E4), Ink: hex(0x1A222D), Quiet: hex(0x4A5462), Rule: hex(0xC5CCD2),
	Field: hex(0xFFFDF7), Key: hex(0xFFFFFF), Edge: hex(0x7C8895), State: hex(0xE6EEF0),
	Main: hex(0x0E4A5B), OnIt: hex(0xFFFFFF), Mark: hex(0xB4470B), Risk: hex(0x7D0A1E),
	Clear: hex(0x006A55), Out: hex(0x7D0A1E), Unsure: hex(0x875A00), Waiting: hex(0x3B3C93),
}

// Dark is the palette for a dark shop: chalk on slate.
var Dark = Palette{
	Paper: hex(0x12171C), Ink: hex(0xF3EFE4), Quiet: hex(0xB9C2CC), Rule: hex(0x39434D),
	Field: hex(0x1A2128), Key: hex(0x27313A), Edge: hex(0x72808D), State: hex(0x1D3740),
	Main: hex(0xF0C24B), OnIt: hex(0x14181C), Mark: hex(0xFF9A57), Risk: hex(0xF47C72),
	Clear: hex(0x63DDBB), Out: hex(0xF47C72), Unsure: hex(0xFFE08A), Waiting: hex(0x9FA8F0),
}

// Sun is the palette for a display in the sun: black on white, nothing in between. What the sun adds
// to both sides of a contrast takes least from the largest one.
var Sun = Palette{
	Paper: hex(0xFFFFFF), Ink: hex(0x000000), Quiet: hex(0x2A2A2A), Rule: hex(0x6A6A6A),
	Field: hex(0xFFFFFF), Key: hex(0xFFFFFF), Edge: hex(0x000000), State: hex(0xEAF3F6),
	Main: hex(0x00303D), OnIt: hex(0xFFFFFF), Mark: hex(0x7E2B00), Risk: hex(0x5A000F),
	Clear: hex(0x005C4C), Out: hex(0x5A000F), Unsure: hex(0x6E4A00), Waiting: hex(0x27297D),
}

func hex(rgb uint32) color.NRGBA {
	return color.NRGBA{R: uint8(rgb >> 16), G: uint8(rgb >> 8), B: uint8(rgb), A: 0xFF}
}
