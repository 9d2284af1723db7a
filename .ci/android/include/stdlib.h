/* Android's stdlib.h brings the integer types and stdio.h with it, and the toolkit leans on that. */
#pragma once
#include_next <stdlib.h>
#include <stdint.h>
#include <stdio.h>
