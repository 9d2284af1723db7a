package store

import "yokebook/measure/store/disk"

// WriteFile puts data in place of a file on this machine so that at every instant the path holds
// either the old bytes or the new ones (see disk.Replace).
func WriteFile(path string, data []byte) error { return disk.Replace(disk.OS{}, path, data) }

// WriteNewFile is WriteFile for a path that must be free: it errs with os.ErrExist when it is not.
func WriteNewFile(path string, data []byte) error { return disk.Create(disk.OS{}, path, data) }
