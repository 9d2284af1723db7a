/* Android's headers say since which version a function is there; here all of them are. */
#pragma once
#include_next <sys/cdefs.h>
#define __INTRODUCED_IN(api)
#define __INTRODUCED_IN_32(api)
#define __INTRODUCED_IN_64(api)
#define __DEPRECATED_IN(api)
#define __REMOVED_IN(api)
#define __RENAME_IF_FILE_OFFSET64(name)
