package org.tugtest.git;

import org.eclipse.jgit.lib.ObjectId;

/** What git keeps at a path. */
sealed interface Entry {
  /** A file; its content is the object of that id. */
  record Blob(ObjectId id) implements Entry {}

  /** A symbolic link. */
  record Link() implements Entry {}

  /** Two or three versions that a merge could not make one of. */
  record Conflict() implements Entry {}
}
