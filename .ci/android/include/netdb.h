/* Android counts the buffers of getnameinfo in size_t, and package net is written for that. */
#pragma once
#define getnameinfo getnameinfo_of_glibc
#include_next <netdb.h>
#undef getnameinfo
#include <stddef.h>

int getnameinfo(const struct sockaddr *address, socklen_t length, char *host, size_t host_length, char *service,
	size_t service_length, int flags);
