/* developer.android.com/ndk/reference/struct/a-rect */
#pragma once
#include <stdint.h>

typedef struct ARect {
	int32_t left, top, right, bottom;
} ARect;
