/* What the window toolkit asks of this header, for a compile check without an NDK: the type stays
   opaque. Source of the names: developer.android.com/ndk/reference/group/a-native-window. */
#pragma once
#include <android/rect.h>
#include <stdint.h>

typedef struct ANativeWindow ANativeWindow;

int32_t ANativeWindow_getWidth(ANativeWindow *window);
int32_t ANativeWindow_getHeight(ANativeWindow *window);
int32_t ANativeWindow_setBuffersGeometry(ANativeWindow *window, int32_t width, int32_t height, int32_t format);
