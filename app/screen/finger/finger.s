//go:build mobile

// This file lets finger_mobile.go declare functions whose bodies are elsewhere.
