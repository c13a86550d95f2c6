/** The files of a harness on disk: folders and globs to texts, and safe ways to write. */
@NullMarked
package org.tugtest.files;

import org.jspecify.annotations.NullMarked;
