package org.tugtest.compare;

import org.tugtest.model.Word;

/** Whether a finding was there before. */
public enum Age implements Word {
  /** It was not there, or was accepted and no longer is. */
  NEW,
  /** It was there. */
  KNOWN
}
